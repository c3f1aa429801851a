package outrigger.generator.cli;

import java.io.IOException;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Origin;
import outrigger.generator.run.Json;

/** A fault as JSON. */
final class FaultJson {
  private FaultJson() {}

  /** Its parts as members of an object; what does not apply is left out. */
  static void write(Json json, Fault fault) throws IOException {
    json.put("message", fault.message());
    put(json, "subject", fault.subject());
    put(json, "parameter", fault.parameter());
    put(json, "what", fault.what());
    put(json, "value", fault.value());
    put(json, "limit", fault.limit());
    put(json, "advice", fault.advice());
    Origin where = fault.where();
    put(json, where.kind() == Origin.Kind.OPTION ? "option" : "file", where.name());
    if (where.line() > 0) {
      json.put("line", where.line()).put("column", where.column());
    }
  }

  private static void put(Json json, String name, String value) throws IOException {
    if (!value.isEmpty()) {
      json.put(name, value);
    }
  }
}
