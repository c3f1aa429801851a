package outrigger.shapes;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.shapes.solid.Faceted;

/** Holds the layers of this module: a package uses only those named before it. */
class ArchitectureTest {
  private static final String ROOT = "outrigger.shapes.";
  private static final List<String> LAYERS = List.of("num", "exact", "profile", "solid", "mesh", "check", "print",
      "stl");
  private static final JavaClasses CLASSES = new ClassFileImporter()
      .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("outrigger.shapes");

  @Test
  void layers_areUsedOneWay() {
    for (int lower = 0; lower < LAYERS.size() - 1; lower++) {
      String[] above = LAYERS.subList(lower + 1, LAYERS.size()).stream().map(name -> ROOT + name + "..")
          .toArray(String[]::new);
      noClasses().that().resideInAPackage(ROOT + LAYERS.get(lower) + "..").should().dependOnClassesThat()
          .resideInAnyPackage(above).check(CLASSES);
    }
  }

  @Test
  void classes_resideInALayer() {
    String[] layers = LAYERS.stream().map(name -> ROOT + name + "..").toArray(String[]::new);
    noClasses().should().resideOutsideOfPackages(layers).check(CLASSES);
  }

  @Test
  void packages_haveNoCycles() {
    slices().matching(ROOT + "(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void jts_isUsedByProfilesOnly() {
    noClasses().that().resideOutsideOfPackage(ROOT + "profile..").should().dependOnClassesThat()
        .resideInAPackage("org.locationtech..").check(CLASSES);
  }

  @Test
  void shapes_knowNoTruck() {
    noClasses().should().dependOnClassesThat().resideInAnyPackage("outrigger.presets..", "outrigger.generator..")
        .check(CLASSES);
  }

  @Test
  void shapes_printNothing() {
    noClasses().should().accessField(System.class, "out").orShould().accessField(System.class, "err").check(CLASSES);
  }

  /** Facets become a solid only when they are proven. */
  @Test
  void facetedSolids_areMadeByTheProofOnly() {
    noClasses().that().resideOutsideOfPackage(ROOT + "check..").should()
        .callMethod(Faceted.class, "of", int[].class, int[].class).check(CLASSES);
  }
}
