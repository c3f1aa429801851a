package outrigger.generator.accessory;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outrigger.generator.joint.Joint;
import outrigger.generator.joint.ScrewPlace;
import outrigger.generator.measure.MeshGauge;
import outrigger.generator.param.Fault;
import outrigger.generator.param.InputException;
import outrigger.generator.param.ParamSpec;
import outrigger.generator.param.ParamValues;
import outrigger.generator.param.Parameter;
import outrigger.generator.param.Texts;
import outrigger.generator.param.Unit;
import outrigger.generator.run.Batch;
import outrigger.generator.run.Made;
import outrigger.generator.run.Progress;
import outrigger.generator.run.Workshop;
import outrigger.presets.Item;
import outrigger.presets.Shelf;
import outrigger.presets.TableInfo;
import outrigger.shapes.check.Measures;
import outrigger.shapes.num.Axis;

/** What every kind of part owes, whoever wrote it. */
class AccessoryContractTest {
  /** Options of every {@code make} command, and keys of every plan, that no parameter may be named like. */
  private static final Set<String> TAKEN = Set.of("name", "kind", "out", "material", "presets", "json", "help",
      "threads", "limit", "limits", "write-anyway", "picture");
  private static final Shelf SHELF = Shelf.standard();

  private static Batch make(Accessory<?> accessory, Map<String, String> parameters) {
    return new Workshop(1, Progress.NONE)
        .make(Workshop.one(accessory.kind(), accessory.kind(), SHELF, parameters));
  }

  private static void assertSoundOnTheBed(Batch batch) {
    assertFalse(batch.parts().isEmpty());
    for (Made made : batch.parts()) {
      Measures m = made.measures();
      assertTrue(m.volume() > 0 && m.area() > 0, made.name() + " has no volume");
      assertEquals(0, m.minZ(), made.name() + " does not lie on the bed");
      assertEquals(1, m.pieces(), made.name() + " falls apart");
      assertTrue(made.part().pose().endsWith("."), made.name() + " has no pose, one sentence");
      assertFalse(made.part().notes().isEmpty(), made.name() + " has no notes");
      assertFalse(made.part().stated().isEmpty(), made.name() + " states no dimension");
      made.part().stated().values().forEach(mm -> assertTrue(Double.isFinite(mm), made.name() + " states " + mm));
    }
  }

  @TestFactory
  List<DynamicTest> atItsDefault_isSoundAndTheSameBytesTwice() {
    return forEach((accessory, name) -> {
      Batch once = make(accessory, Map.of());
      assertSoundOnTheBed(once);
      Batch twice = make(accessory, Map.of());
      for (int i = 0; i < once.parts().size(); i++) {
        assertArrayEquals(once.parts().get(i).stl(), twice.parts().get(i).stl());
      }
    });
  }

  /** The least and the greatest value of each number, every word of each choice, everything else at its default. */
  @TestFactory
  List<DynamicTest> atEachLimit_isSoundOrRefusedByParameter() {
    List<DynamicTest> tests = new ArrayList<>();
    for (Accessory<?> accessory : Accessories.all()) {
      for (Parameter parameter : ParamSpec.of(accessory.parameters()).parameters()) {
        for (String text : limits(parameter)) {
          tests.add(DynamicTest.dynamicTest(accessory.kind() + " --" + parameter.key() + " " + text,
              () -> assertSoundOrRefused(accessory, parameter.key(), text)));
        }
      }
    }
    return tests;
  }

  /** Every preset a parameter can name, such as every screw and every magnet. */
  @TestFactory
  List<DynamicTest> withEachPreset_isSoundOrRefusedByParameter() {
    List<DynamicTest> tests = new ArrayList<>();
    for (Accessory<?> accessory : Accessories.all()) {
      for (Parameter parameter : ParamSpec.of(accessory.parameters()).parameters()) {
        for (TableInfo table : SHELF.tables()) {
          if (parameter.isPresetOf(table.type())) {
            for (Item item : SHELF.items(table.type())) {
              tests.add(DynamicTest.dynamicTest(accessory.kind() + " --" + parameter.key() + " " + item.name(),
                  () -> assertSoundOrRefused(accessory, parameter.key(), item.name())));
            }
          }
        }
      }
    }
    return tests;
  }

  private static void assertSoundOrRefused(Accessory<?> accessory, String key, String text) {
    try {
      assertSoundOnTheBed(make(accessory, Map.of(key, text)));
    } catch (InputException e) {
      Set<String> keys = Set.copyOf(ParamSpec.of(accessory.parameters()).keys());
      for (Fault fault : e.faults()) {
        assertTrue(keys.contains(fault.parameter()), "the refusal names no parameter: " + fault.message());
        assertTrue(fault.advice().endsWith(".") || fault.advice().endsWith("?"),
            "the refusal advises nothing: " + fault.message());
      }
    }
  }

  private static List<String> limits(Parameter parameter) {
    if (parameter.isNumber()) {
      return List.of(Texts.number(parameter.min()), Texts.number(parameter.max()));
    }
    if (parameter.isList() && parameter.hasUnit()) {
      return List.of(Texts.number(parameter.min()), Texts.number(parameter.max()));
    }
    return parameter.form().kind().equals("yes-no") ? List.of("yes", "no") : parameter.choices();
  }

  @TestFactory
  List<DynamicTest> parameters_areDeclaredForUsers() {
    return forEach((accessory, name) -> {
      ParamSpec<?> spec = ParamSpec.of(accessory.parameters());
      for (Parameter parameter : spec.parameters()) {
        assertFalse(TAKEN.contains(parameter.key()), parameter.key() + " is the name of an option of every command");
        assertTrue(parameter.help().endsWith("."), parameter.key() + ": help is no sentence");
        assertTrue(parameter.unit() != Unit.NONE || !parameter.form().kind().equals("length"));
      }
      ParamValues.of(spec).resolve(name, SHELF);
      assertTrue(accessory.kind().matches("[a-z]+(-[a-z]+)*"));
      assertTrue(accessory.summary().endsWith(".") && !accessory.summary().contains("@|")
          && !accessory.summary().contains("${"), name + ": summary");
    });
  }

  /** A part with holes for screws says what they clamp; a place is where a hole is, whichever way the part lies. */
  @TestFactory
  List<DynamicTest> joints_lieWhereTheHolesAre() {
    return forEach((accessory, name) -> {
      for (Made made : make(accessory, Map.of()).parts()) {
        boolean bored = made.part().stated().containsKey("hole-diameter");
        assertEquals(bored, !made.part().fixings().joints().isEmpty(), made.name());
        MeshGauge gauge = MeshGauge.of(made.mesh().mesh());
        for (Joint joint : made.part().fixings().joints()) {
          for (ScrewPlace place : joint.places()) {
            assertTrue(isFree(gauge, place), made.name() + ": " + place);
          }
        }
      }
    });
  }

  private static boolean isFree(MeshGauge gauge, ScrewPlace p) {
    double off = 0.013;
    return Math.abs(p.dz()) == 1 ? gauge.crossings(Axis.Z, p.x() + off, p.y() + off).isEmpty()
        : gauge.crossings(Axis.Y, p.x() + off, p.z() + off).isEmpty();
  }

  @Test
  void kinds_areEachListedOnce() {
    assertEquals(Accessories.kinds().names().stream().distinct().toList(), Accessories.kinds().names());
  }

  private interface Check {
    void run(Accessory<?> accessory, String name);
  }

  private static List<DynamicTest> forEach(Check check) {
    return Accessories.all().stream().map(accessory -> DynamicTest.dynamicTest(accessory.kind(),
        () -> check.run(accessory, accessory.kind()))).toList();
  }
}
