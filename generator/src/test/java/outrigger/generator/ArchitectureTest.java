package outrigger.generator;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Holds the layers of this module: a package uses only those named before it; printing is for the command line. */
class ArchitectureTest {
  private static final String ROOT = "outrigger.generator.";
  private static final List<String> LAYERS = List.of("param", "magnet", "joint", "layout", "accessory", "stack", "picture", "print",
      "truck", "fit", "clash", "scene", "load", "drive", "plan",
      "run", "doc", "cli");
  private static final JavaClasses CLASSES = new ClassFileImporter()
      .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("outrigger.generator");

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
  void accessories_doNotKnowOneAnother() {
    slices().matching(ROOT + "accessory.(*)..").should().beFreeOfCycles().check(CLASSES);
    for (String kind : List.of("body", "pad", "spacer", "tray")) {
      String[] others = List.of("body", "pad", "spacer", "tray").stream().filter(other -> !other.equals(kind))
          .map(other -> ROOT + "accessory." + other + "..").toArray(String[]::new);
      noClasses().that().resideInAPackage(ROOT + "accessory." + kind + "..").should().dependOnClassesThat()
          .resideInAnyPackage(others).check(CLASSES);
    }
  }

  /** Whoever wants a mesh asks the mesher; what is public in its parts is so for each other. */
  @Test
  void partsOfTheMesh_areNotUsed() {
    noClasses().should().dependOnClassesThat().resideInAPackage("outrigger.shapes.mesh.*..").check(CLASSES);
  }

  /** Whoever wants to know whether a part prints asks for the report. */
  @Test
  void partsOfPrinting_areNotUsed() {
    noClasses().should().dependOnClassesThat().resideInAPackage("outrigger.shapes.print.*..").check(CLASSES);
  }

  @Test
  void printing_isForTheCommandLine() {
    noClasses().that().resideOutsideOfPackage(ROOT + "cli..").should().accessField(System.class, "out")
        .orShould().accessField(System.class, "err").check(CLASSES);
  }

  @Test
  void picocli_isUsedByTheCommandLineOnly() {
    noClasses().that().resideOutsideOfPackage(ROOT + "cli..").should().dependOnClassesThat()
        .resideInAPackage("picocli..").check(CLASSES);
  }

  @Test
  void hipparchus_isUsedForMagnetsOnly() {
    noClasses().that().resideOutsideOfPackage(ROOT + "magnet..").should().dependOnClassesThat()
        .resideInAPackage("org.hipparchus..").check(CLASSES);
  }

  /** Its loading would slow every start, and fonts and screens are missing on many machines. */
  @Test
  void awt_isNotUsed() {
    noClasses().should().dependOnClassesThat().resideInAnyPackage("java.awt..", "javax.imageio..", "javax.swing..")
        .check(CLASSES);
  }

  @Test
  void jts_isNotUsedHere() {
    noClasses().should().dependOnClassesThat().resideInAPackage("org.locationtech..").check(CLASSES);
  }
}
