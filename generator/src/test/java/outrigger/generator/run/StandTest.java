package outrigger.generator.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import outrigger.generator.clash.Clash;
import outrigger.generator.load.Mass;
import outrigger.generator.plan.PlanReader;

/** The finished truck of a plan: parts where they go, and what is found of them. */
class StandTest {
  private static final String TRUCK = """
      material = "PETG"
      [truck]
      wheelbase = 150
      chassis-mass = 400
      chassis-cg = [-75, 0, -10]
      [rail]
      spacing = 32
      height = 11
      [[mount]]
      name = "cab-front"
      x = 5
      floor = 24
      [[mount]]
      name = "cab-rear"
      x = -45
      floor = 24
      [body]
      mass = 200
      cg = [-20, 0, 40]
      [bumper]
      face = 43.2
      seat = 33
      depth = 6
      z = -5.5
      [drive]
      [[item]]
      name = "battery"
      length = 40
      width = 18
      height = 12
      mass = 30
      [[part]]
      kind = "body-mount"
      [[part]]
      kind = "bumper-spacer"
      screw = "M3-countersunk"
      head-seat = "countersink"
      [[part]]
      kind = "electronics-tray"
      name = "tray"
      length = 80
      x = -100
      """;

  @TempDir
  Path folder;

  private Standing standing(String more) throws IOException {
    Path file = Files.writeString(folder.resolve("t.toml"), TRUCK + more);
    return new Workshop().working(new PlanReader(Accessories.kinds(), Optional.empty(), Map.of()).read(file)).standing()
        .orElseThrow();
  }

  @Test
  void standing_soundTruck_isClear() throws IOException {
    Standing standing = standing("");
    assertEquals(List.of(), standing.clashes().clashes().stream().map(Clash::words).toList());
    assertTrue(standing.clashes().isClear(), standing.places().toString());
    assertEquals(List.of(), standing.unplaced());
  }

  /** Four mounts rest on the webs' outer faces: x 5 and -45, half the spacing and a web outward. */
  @Test
  void standing_mounts_restOnTheRails() throws IOException {
    List<String> seats = standing("").clashes().near().stream().filter(near -> near.isSeat() && near.distance() == 0)
        .map(near -> near.first().name() + " " + near.second().name()).toList();
    assertTrue(seats.containsAll(List.of("rail left cab-front-left", "rail right cab-front-right",
        "rail left cab-rear-left", "rail right cab-rear-right")), seats.toString());
  }

  /** Left and right mounts mirror each other, so that the whole weighs on the centre line. */
  @Test
  void standing_masses_followStatics() throws IOException {
    Standing standing = standing("");
    double moment = standing.balance().masses().stream().mapToDouble(m -> -m.grams() * m.at().x()).sum();
    assertEquals(moment / 150, standing.balance().rear(), 1e-9);
    assertEquals(0, standing.balance().centre().y(), 1e-3);
    Mass battery = standing.balance().masses().stream().filter(m -> m.name().equals("battery")).findFirst().orElseThrow();
    assertEquals(30, battery.grams());
    // Middle of the tray at -100; tray floor 1.2 thick, its underside 8 below the rails' tops; half the battery's height.
    assertEquals(-100, battery.at().x(), 1e-6);
    assertEquals(-8 + 1.2 + 6, battery.at().z(), 1e-6);
  }

  @Test
  void standing_tubWhereAMountStands_isNamedWithPlaceAndSize() throws IOException {
    Standing standing = standing("[[keep-out]]\nname = \"interior tub\"\nfrom = [0, 20, 15]\nto = [10, 40, 60]\n");
    Clash clash = standing.clashes().clashes().get(0);
    assertEquals("cab-front-left", clash.first().name());
    assertEquals("keep-out 1 interior tub", clash.second().name());
    assertTrue(clash.volume() > 10 && Math.abs(clash.overlaps().get(0).centre().x() - 5) < 0.2, clash.words());
    assertFalse(standing.clashes().isClear());
  }

  @Test
  void standing_twoKeepOutsOfOneName_areToldApart() throws IOException {
    String tub = "[[keep-out]]\nfrom = [0, 20, 15]\nto = [10, 40, 60]\n";
    assertEquals(List.of("keep-out 1 keep-out", "keep-out 2 keep-out"), standing(tub + tub).clashes().clashes().stream()
        .map(clash -> clash.second().name()).toList());
  }

  @Test
  void standing_cautions_carryTheEstimate() throws IOException {
    Standing standing = standing("");
    assertTrue(standing.cautions().contains(Standing.CAUTION));
    assertEquals(5, standing.bent().size());
    String json = Json.text(standing::write);
    assertTrue(json.contains("\"safety-factor\"") && json.contains("\"turning-circle-mm\""), json);
  }

  /** Seat 33, face 43.2, depth 6: 4.2 thick, so its middle lies at 35.1, on the centre line, at the screws' height. */
  @Test
  void standing_spacer_liesBetweenSeatAndBumperInEitherPose() throws IOException {
    for (String pose : new String[] {"flat", "on-edge"}) {
      Standing standing = standing("""
          [[part]]
          kind = "bumper-spacer"
          name = "final"
          corner-radius = 0
          pose = "%s"
          """.formatted(pose));
      Mass spacer = standing.balance().masses().stream().filter(m -> m.name().equals("final")).findFirst().orElseThrow();
      assertEquals(35.1, spacer.at().x(), 0.02, pose);
      assertEquals(0, spacer.at().y(), 0.02, pose);
      assertEquals(-5.5, spacer.at().z(), 0.02, pose);
      assertEquals(List.of(), standing.unplaced());
    }
  }

  /** A foot exactly on a bend, on either face and where the frame narrows or widens, cuts into no rail. */
  @Test
  void standing_mountOnABend_touchesTheRailOnly() throws IOException {
    for (String spacing : List.of("38", "30")) {
      Standing standing = standing("""
          [[rail-at]]
          x = -45
          spacing = 32
          [[rail-at]]
          x = -90
          spacing = %s
          """.formatted(spacing));
      assertEquals(List.of(), standing.clashes().clashes().stream().map(Clash::words)
          .filter(words -> words.contains("cab-rear")).toList(), "spacing " + spacing);
    }
  }

  /** Nuts behind the web take 2.4 mm and the screws' ends more: what is as wide as the rails are apart goes elsewhere. */
  @Test
  void standing_itemBetweenRails_keepsOffTheScrewsOfMounts() throws IOException {
    Standing standing = standing("""
        [between-rails]
        front = 20
        rear = -55
        height = 15
        [[item]]
        name = "receiver"
        length = 20
        width = 28
        height = 10
        rooms = ["between-rails"]
        """);
    assertEquals(List.of(), standing.clashes().clashes().stream().map(Clash::words).toList());
  }
}
