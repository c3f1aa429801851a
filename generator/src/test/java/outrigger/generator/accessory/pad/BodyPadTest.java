package outrigger.generator.accessory.pad;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.generator.accessory.Part;
import outrigger.generator.measure.MeshGauge;
import outrigger.generator.measure.Proven;
import outrigger.generator.param.BadDimension;
import outrigger.generator.param.ParamValues;
import outrigger.presets.Shelf;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;

/** Pads as the mesh has them. The default holds a 6x2 magnet 0.2 below its rim on 1.2 of plate. */
class BodyPadTest {
  private static Part part(String... pairs) {
    return new BodyPad().build(ParamValues.record(BodyPadParams.class, Shelf.standard(), pairs), Shelf.standard()).get(0);
  }

  @Test
  void build_default_hasPlateAndRimAsStated() {
    MeshGauge gauge = Proven.gauge(part().solid());
    assertEquals(1.2 + 2 + 0.2, gauge.size(Axis.Z), Grid.STEP);
    List<Double> middle = gauge.crossings(Axis.Z, 0.01, 0.02);
    assertEquals(2, middle.size());
    assertEquals(1.2, middle.get(1) - middle.get(0), Grid.STEP);
  }

  @Test
  void build_steel_takesItsDiscAndNoPole() {
    Part part = part("facing", "steel", "steel", "1", "steel-width", "12", "pole", "none");
    MeshGauge gauge = Proven.gauge(part.solid());
    assertEquals(1.2 + 1 + 0.2, gauge.size(Axis.Z), Grid.STEP);
    assertTrue(part.notes().stream().noneMatch(note -> note.contains("pole engraved")), part.notes().toString());
  }

  @Test
  void build_magnet_carriesTheCautions() {
    assertTrue(part().notes().stream().anyMatch(note -> note.contains("swallowed")));
  }

  @Test
  void build_leadInDeeperThanTheDiscCanSpare_isRefused() {
    BadDimension refusal = assertThrows(BadDimension.class,
        () -> part("facing", "steel", "steel", "0.2", "recess", "0", "lead-in", "0.3", "pole", "none"));
    assertTrue(refusal.what().contains("lead-in"), refusal.what());
  }
}
