package outrigger.generator.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outrigger.generator.accessory.Accessories;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Measure;
import outrigger.generator.param.ParamSpec;
import outrigger.generator.truck.Tables;
import outrigger.generator.truck.Truck;
import outrigger.presets.Shelf;

class TruckReaderTest {
  private static final String PART = "[[part]]\nkind = \"bumper-spacer\"\n";

  @TempDir
  Path folder;

  private Plan read(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("t.toml"), text + PART);
    return new PlanReader(Accessories.kinds(), Optional.empty(), Map.of()).read(file);
  }

  private Truck truck(String text) throws IOException {
    Plan plan = read(text);
    assertEquals(List.of(), plan.faults().stream().map(Fault::message).toList());
    return plan.truck().orElseThrow();
  }

  @Test
  void read_planOfPartsOnly_hasNoTruck() throws IOException {
    assertEquals(Optional.empty(), read("").truck());
  }

  /** 1 lb is 453.59237 g and 16 oz, exactly (international yard and pound agreement, 1959). */
  @Test
  void read_massesWithUnits_areInGrams() throws IOException {
    Truck truck = truck("[truck]\nchassis-mass = \"1lb\"\n[body]\nmass = \"6oz\"\n[[item]]\nname = \"battery\"\n"
        + "mass = \"0.045kg\"\n");
    assertEquals(453.59237, truck.truck().record().chassisMass());
    assertEquals(170.09713875, truck.body().record().mass());
    assertEquals(45, truck.items().get(0).record().mass());
    assertEquals(List.of("body: mass is \"6 stone\" (t.toml, line 2, column 1), not a mass: unknown unit \"stone\". "
        + "Write a mass in g, kg, oz or lb, such as 150, 150g, 0.4kg or 6oz."),
        read("[body]\nmass = \"6 stone\"\n").faults().stream().map(Fault::message).toList());
  }

  @Test
  void read_truckInInches_isInMillimetres() throws IOException {
    Truck truck = truck("[rail]\nspacing = \"1.25in\"\n[[mount]]\nname = \"a\"\nfloor = \"0.95in+-10thou\"\n");
    assertEquals(31.75, truck.rails().at(0).spacing(), 1e-12);
    assertEquals(Measure.of(24.13, 0.254), truck.mounts().get(0).record().floor());
  }

  @Test
  void at_taperedChannel_goesEvenlyBetweenPlaces() throws IOException {
    Truck truck = truck("[rail]\nform = \"channel\"\nflange = 5\nweb = 1.5\nspacing = 40\nheight = 12\nfront = 20\n"
        + "length = 180\n[[rail-at]]\nx = -20\nspacing = 34\n[[rail-at]]\nx = -100\nheight = 8\n");
    assertEquals(37, truck.rails().at(0).spacing(), 1e-12);
    assertEquals(34, truck.rails().at(-60).spacing(), 1e-12);
    assertEquals(10, truck.rails().at(-60).height(), 1e-12);
    assertEquals(8, truck.rails().at(-150).height(), 1e-12);
    assertEquals(StrictMath.toDegrees(StrictMath.atan(6.0 / 40 / 2)), truck.rails().toe(0), 1e-6);
  }

  @Test
  void at_steppedPlate_changesAtThePlace() throws IOException {
    Truck truck = truck("[rail]\nchange = \"step\"\nspacing = 40\n[[rail-at]]\nx = -20\nspacing = 30\n");
    assertEquals(40, truck.rails().at(-19.9).spacing());
    assertEquals(30, truck.rails().at(-20).spacing());
    assertEquals(30, truck.rails().narrowest(-30, 20));
  }

  @Test
  void read_manyFaults_tellsEachWithItsPlace() throws IOException {
    List<String> told = read("[rail]\nflange = 3\nhigh = 2\n[[mount]]\nx = 900\n[[mount]]\nx = -400\nfloor = \"about 3\"\n"
        + "[[keep-out]]\nfrom = [1, 2]\n").faults().stream().map(Fault::message).toList();
    assertTrue(told.stream().anyMatch(t -> t.contains("no parameter \"high\" (t.toml, line 3, column 1)")), told.toString());
    assertTrue(told.stream().anyMatch(t -> t.contains("a plate has none") && t.contains("line 2")), told.toString());
    assertTrue(told.stream().anyMatch(t -> t.contains("x is 900 mm") && t.contains("line 5")), told.toString());
    assertTrue(told.stream().anyMatch(t -> t.contains("floor is \"about 3\"") && t.contains("line 8")), told.toString());
    assertTrue(told.stream().anyMatch(t -> t.contains("from has 2 values") && t.contains("line 10")), told.toString());
  }

  @Test
  void tables_everyKey_hasAWordAndADefaultThatStands() {
    for (Tables.Declared table : Tables.ALL) {
      assertTrue(!ParamSpec.of(table.type()).parameters().isEmpty(), table.key());
      outrigger.generator.param.ParamValues.record(table.type(), Shelf.standard());
    }
  }
}
