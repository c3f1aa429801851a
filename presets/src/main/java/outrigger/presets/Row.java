package outrigger.presets;

import java.util.HashMap;
import java.util.Map;

/**
 * The values of a row by column, each with its source.
 *
 * @param data values by column
 * @param sources sources by column, for the same columns
 */
record Row(Map<String, Datum> data, Map<String, Source> sources) {
  Row {
    data = Map.copyOf(data);
    sources = Map.copyOf(sources);
  }

  /** This row with the values of another laid over it; the name stays as it was spelt first. */
  Row with(Row over) {
    Map<String, Datum> mergedData = new HashMap<>(data);
    Map<String, Source> mergedSources = new HashMap<>(sources);
    mergedData.putAll(over.data);
    mergedSources.putAll(over.sources);
    mergedData.put("name", data.getOrDefault("name", over.data.get("name")));
    mergedSources.put("name", sources.getOrDefault("name", over.sources.get("name")));
    return new Row(mergedData, mergedSources);
  }
}
