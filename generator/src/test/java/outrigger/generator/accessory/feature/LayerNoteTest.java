package outrigger.generator.accessory.feature;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import outrigger.presets.Printer;
import outrigger.presets.Shelf;

class LayerNoteTest {
  private static final Printer COARSE = Shelf.standard().get(Printer.class, "demo-0.4");
  private static final Printer FINE = Shelf.standard().get(Printer.class, "demo-0.25");

  @Test
  void text_wholeLayers_saysExactly() {
    assertEquals("4.2 mm comes out exactly: first layer 0.2 and 20 x 0.2.", LayerNote.of(4.2, COARSE).text());
    // 0.16 + 7 * 0.12 = 1.0
    assertEquals("1 mm comes out exactly: first layer 0.16 and 7 x 0.12.", LayerNote.of(1, FINE).text());
  }

  @Test
  void text_smallError_advisesAnotherFirstLayer() {
    assertEquals("4.25 mm prints as 4.2 mm (-0.050 mm): first layer 0.2 and 20 x 0.2. Set the first layer to 0.25 to "
        + "hit it, or print on edge.", LayerNote.of(4.25, COARSE).text("print on edge"));
  }

  @Test
  void text_largerError_advisesAnotherLayerHeight() {
    LayerNote note = LayerNote.of(4.29, COARSE);
    assertEquals("4.29 mm prints as 4.2 mm (-0.090 mm): first layer 0.2 and 20 x 0.2. Set the layer height to 0.2045 "
        + "to hit it.", note.text());
    assertEquals(4.29, 0.2 + 20 * 0.2045, 1e-9);
  }

  @Test
  void text_lessThanTheFirstLayer_advisesTheHeightThatComesOut() {
    assertEquals("0.1 mm prints as 0.2 mm (+0.100 mm): first layer 0.2 and 0 x 0.2. Make it 0.2 mm, or print on edge.",
        LayerNote.of(0.1, COARSE).text("print on edge"));
  }
}
