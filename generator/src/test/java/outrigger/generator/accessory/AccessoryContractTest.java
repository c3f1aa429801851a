package outrigger.generator.accessory;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import outrigger.generator.param.Fault;
import outrigger.generator.param.InputException;
import outrigger.generator.param.ParamSpec;
import outrigger.generator.param.ParamValues;
import outrigger.generator.param.Parameter;
import outrigger.presets.DiscMagnet;
import outrigger.presets.Item;
import outrigger.presets.Printer;
import outrigger.presets.Rail;
import outrigger.presets.Screw;
import outrigger.presets.Shelf;
import outrigger.shapes.check.Measures;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Grid;
import outrigger.shapes.stl.StlWriter;

/** What holds for every accessory on the list, whatever it makes. */
class AccessoryContractTest {
  private static final Shelf SHELF = Shelf.standard();
  private static final List<Class<? extends Item>> TABLES =
      List.of(Rail.class, Screw.class, DiscMagnet.class, Printer.class);

  static Stream<Accessory<?>> accessories() {
    return Accessories.all().stream();
  }

  @ParameterizedTest
  @MethodSource("accessories")
  void build_default_isSoundAndTellsWhatItIs(Accessory<?> accessory) {
    List<Part> parts = build(accessory);
    assertFalse(parts.isEmpty());
    Set<String> suffixes = new HashSet<>();
    for (Part part : parts) {
      assertTrue(suffixes.add(part.suffix()), "two parts called " + part.suffix());
      assertFalse(part.pose().isBlank());
      assertFalse(part.notes().isEmpty());
      assertFalse(part.stated().isEmpty());
      requireSound(part, "at its defaults");
    }
  }

  /** One parameter moved to its least and greatest value, each of its words, each preset of the table. */
  @ParameterizedTest
  @MethodSource("accessories")
  void build_eachParameterAtItsEnds_isSoundOrRefusedByName(Accessory<?> accessory) {
    ParamSpec<?> spec = ParamSpec.of(accessory.parameters());
    int built = 0;
    for (Parameter parameter : spec.parameters()) {
      for (String value : values(parameter)) {
        String given = accessory.kind() + " --" + parameter.key() + " " + value;
        try {
          List<Part> parts = build(accessory, parameter.key(), value);
          parts.forEach(part -> requireSound(part, given));
          built++;
        } catch (BadDimension refusal) {
          assertTrue(spec.find(refusal.parameter()).isPresent(), given + ": " + refusal.getMessage());
        } catch (InputException refusal) {
          List<String> keys = refusal.faults().stream().map(Fault::parameter).toList();
          assertTrue(keys.stream().allMatch(key -> spec.find(key).isPresent()), given + ": " + refusal.getMessage());
        }
      }
    }
    assertTrue(built >= 10, "only " + built + " built");
  }

  @ParameterizedTest
  @MethodSource("accessories")
  void build_twice_givesTheSameBytes(Accessory<?> accessory) {
    byte[] once = bytes(build(accessory).get(0));
    byte[] again = bytes(build(accessory).get(0));
    assertArrayEquals(once, again);
  }

  private static List<String> values(Parameter parameter) {
    List<String> values = new ArrayList<>(parameter.choices());
    if (parameter.isNumber()) {
      values.add(Words.number(parameter.min()));
      values.add(Words.number(parameter.max()));
    }
    if (parameter.form().kind().equals("yes-no")) {
      values.addAll(List.of("yes", "no"));
    }
    for (Class<? extends Item> table : TABLES) {
      if (parameter.isPresetOf(table)) {
        values.addAll(SHELF.names(table));
      }
    }
    return values;
  }

  private static void requireSound(Part part, String given) {
    Proof.Verdict verdict = Proof.judge(Mesher.mesh(part.solid()));
    assertTrue(verdict.proven().isPresent(), () -> given + ": " + verdict.findings());
    Measures measures = verdict.measures();
    assertTrue(measures.volume() > 0, given);
    assertEquals(1, measures.pieces(), given);
    assertEquals(0, measures.minZ(), Grid.STEP, given + " does not lie on the bed");
  }

  private static byte[] bytes(Part part) {
    return StlWriter.bytes(Proof.judge(Mesher.mesh(part.solid())).proven().orElseThrow(), "part");
  }

  private static <P extends Record> List<Part> build(Accessory<P> accessory, String... given) {
    return accessory.build(ParamValues.record(accessory.parameters(), SHELF, given), SHELF);
  }
}
