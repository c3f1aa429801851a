package outrigger.generator.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.generator.clash.Element;
import outrigger.generator.param.ParamValues;
import outrigger.generator.truck.RailAt;
import outrigger.generator.truck.RailParams;
import outrigger.generator.truck.Rails;
import outrigger.presets.Shelf;
import outrigger.shapes.check.Proof;

class RailShapesTest {
  private static final Shelf SHELF = Shelf.standard();

  /** By hand: a box 4 x 12, 1 thick, has 28 mm2 of section; steps by less, by just and by more than its width. */
  @Test
  void elements_steppedBox_isSoundHoweverFarItSteps() {
    for (String spacing : List.of("39", "36", "34", "32", "30", "42", "48", "50")) {
      Rails rails = Rails.of(ParamValues.record(RailParams.class, SHELF, "form", "box", "spacing", "40", "web", "1",
          "flange", "4", "height", "12", "front", "25", "length", "100", "change", "step"),
          List.of(ParamValues.record(RailAt.class, SHELF, "x", "-30", "spacing", spacing)));
      for (Element rail : new RailShapes(rails).elements()) {
        Proof.Verdict verdict = Proof.of(rail.solid());
        assertEquals(28 * 100, verdict.measures().volume(), 3.5, "to " + spacing);
      }
    }
  }
}
