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
  private static final String MESH = ROOT + "mesh.";
  private static final List<String> MESH_LAYERS = List.of("leaf", "frame", "face", "inside", "meet", "outline",
      "triangulation", "wire", "sheet", "spatial", "settle", "planar");
  private static final String PRINT = ROOT + "print.";
  private static final List<String> PRINT_LAYERS = List.of("facet", "tree", "slice", "sample", "ball", "spot", "place",
      "wall", "layer", "hang", "stand", "pose");
  private static final JavaClasses CLASSES = new ClassFileImporter()
      .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("outrigger.shapes");

  @Test
  void layers_areUsedOneWay() {
    assertUsedOneWay(ROOT, LAYERS);
  }

  @Test
  void partsOfTheMesh_areUsedOneWay() {
    assertUsedOneWay(MESH, MESH_LAYERS);
  }

  @Test
  void partsOfPrinting_areUsedOneWay() {
    assertUsedOneWay(PRINT, PRINT_LAYERS);
  }

  private static void assertUsedOneWay(String root, List<String> layers) {
    for (int lower = 0; lower < layers.size() - 1; lower++) {
      noClasses().that().resideInAPackage(root + layers.get(lower) + "..").should().dependOnClassesThat()
          .resideInAnyPackage(all(root, layers.subList(lower + 1, layers.size()))).check(CLASSES);
    }
  }

  private static String[] all(String root, List<String> layers) {
    return layers.stream().map(name -> root + name + "..").toArray(String[]::new);
  }

  @Test
  void classes_resideInALayer() {
    noClasses().should().resideOutsideOfPackages(all(ROOT, LAYERS)).check(CLASSES);
    noClasses().that().resideInAPackage(MESH + "*..").should().resideOutsideOfPackages(all(MESH, MESH_LAYERS))
        .check(CLASSES);
    noClasses().that().resideInAPackage(PRINT + "*..").should().resideOutsideOfPackages(all(PRINT, PRINT_LAYERS))
        .check(CLASSES);
  }

  /** All parts of the mesh may speak of a mesh, but what is put together of them is above them all. */
  @Test
  void partsOfTheMesh_doNotKnowTheWhole() {
    noClasses().that().resideInAnyPackage(all(MESH, MESH_LAYERS)).should().dependOnClassesThat()
        .haveFullyQualifiedName(MESH + "Mesher").check(CLASSES);
  }

  /** What is public in the parts of the mesh is so for the other parts. */
  @Test
  void partsOfTheMesh_areUsedWithinItOnly() {
    noClasses().that().resideOutsideOfPackage(ROOT + "mesh..").should().dependOnClassesThat()
        .resideInAnyPackage(all(MESH, MESH_LAYERS)).check(CLASSES);
  }

  /** What all gauges are put together in is above them; what a specimen is made of is below it. */
  @Test
  void partsOfPrinting_doNotKnowTheWhole() {
    noClasses().that().resideInAnyPackage(all(PRINT, PRINT_LAYERS)).should().dependOnClassesThat()
        .haveFullyQualifiedName(PRINT + "Printability").check(CLASSES);
    noClasses().that().resideInAnyPackage(all(PRINT, PRINT_LAYERS.subList(0, PRINT_LAYERS.indexOf("spot")))).should()
        .dependOnClassesThat().haveFullyQualifiedName(PRINT + "Specimen").check(CLASSES);
  }

  /** What is public in the parts of printing is so for the other parts. */
  @Test
  void partsOfPrinting_areUsedWithinItOnly() {
    noClasses().that().resideOutsideOfPackage(ROOT + "print..").should().dependOnClassesThat()
        .resideInAnyPackage(all(PRINT, PRINT_LAYERS)).check(CLASSES);
  }

  @Test
  void packages_haveNoCycles() {
    slices().matching(ROOT + "(*)..").should().beFreeOfCycles().check(CLASSES);
    slices().matching(MESH + "(*)..").should().beFreeOfCycles().check(CLASSES);
    slices().matching(PRINT + "(*)..").should().beFreeOfCycles().check(CLASSES);
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
