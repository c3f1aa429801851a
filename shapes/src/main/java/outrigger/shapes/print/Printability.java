package outrigger.shapes.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.hang.OverhangGauge;
import outrigger.shapes.print.pose.PoseGauge;
import outrigger.shapes.print.stand.StandingGauge;
import outrigger.shapes.print.wall.GapGauge;
import outrigger.shapes.print.wall.WallGauge;

/** Measures whether a sound part prints: runs every gauge and collects what they read. */
public final class Printability {
  /** Every gauge there is, in the order of the report. A new gauge is added here. */
  private static final List<Gauge> GAUGES = List.of(new WallGauge(), new GapGauge(), new OverhangGauge(),
      new StandingGauge(), new HeightGauge(), new PoseGauge(), new MaterialGauge());

  /** Most facets of a part whose gauges run side by side: setting threads up for each of them takes longer, measured. */
  private static final int SMALL = 2000;

  private Printability() {}

  /** Every gauge, in the order of the report. */
  static List<Gauge> gauges() {
    return GAUGES;
  }

  /** What every gauge reads off a part. Same specimen, same report, whatever the number of workers. */
  public static PrintReport examine(Specimen specimen) {
    return examine(specimen, GAUGES, name -> { });
  }

  /** How many gauges there are. */
  public static int count() {
    return GAUGES.size();
  }

  /**
   * The same, telling how far it is.
   *
   * @param finished told the name of each gauge when it has read
   */
  public static PrintReport examine(Specimen specimen, Consumer<String> finished) {
    return examine(specimen, GAUGES, finished);
  }

  /** A report with maps that tell widths up to twice the limit, and all of them place by place on large facets. */
  public static PrintReport mapped(CheckedMesh mesh, PrintReport report, Workers workers) {
    Specimen specimen = new Specimen(mesh, report.limits(), Map.of(), workers).mapped();
    List<FacetField> fields = new ArrayList<>();
    for (Gauge gauge : List.of(new WallGauge(), new GapGauge(), new OverhangGauge())) {
      specimen.reading(gauge).fields().stream().map(specimen::asGiven).forEach(fields::add);
    }
    List<String> known = fields.stream().map(FacetField::name).toList();
    report.fields().stream().filter(field -> !known.contains(field.name())).forEach(fields::add);
    return new PrintReport(report.limits(), report.concerns(), report.facts(), fields, report.notExamined(),
        report.load());
  }

  static PrintReport examine(Specimen specimen, List<Gauge> gauges, Consumer<String> finished) {
    List<Concern> concerns = new ArrayList<>();
    List<Fact> facts = new ArrayList<>();
    List<FacetField> fields = new ArrayList<>();
    List<String> notExamined = new ArrayList<>();
    for (Reading reading : readings(specimen, gauges, finished)) {
      concerns.addAll(reading.concerns());
      facts.addAll(reading.facts());
      reading.fields().stream().map(specimen::asGiven).forEach(fields::add);
      notExamined.addAll(reading.notExamined());
    }
    concerns.sort(Comparator.comparing(Concern::severity));
    return new PrintReport(specimen.limits(), concerns, facts, fields, notExamined, specimen.load());
  }

  /** What the gauges read: of a small part side by side, of others in turn, each spreading its own work over the threads. */
  private static List<Reading> readings(Specimen specimen, List<Gauge> gauges, Consumer<String> finished) {
    boolean small = specimen.mesh().facetCount() <= SMALL;
    Specimen measured = small ? specimen.alone() : specimen;
    Workers workers = small ? specimen.workers() : Workers.of(1);
    return workers.each(gauges.size(), i -> {
      Reading reading = measured.reading(gauges.get(i));
      finished.accept(gauges.get(i).name());
      return reading;
    });
  }
}
