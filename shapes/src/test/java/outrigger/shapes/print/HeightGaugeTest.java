package outrigger.shapes.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outrigger.shapes.num.Workers;

class HeightGaugeTest {
  @ParameterizedTest
  @CsvSource({"4.2, 4.2", "4.31, 4.4", "4.29, 4.2", "0.1, 0.2", "0.05, 0.2", "1.5875, 1.6", "25.4, 25.4"})
  void of_twoTenths_findsNearestHeight(double height, double printed) {
    LayerHeight layers = LayerHeight.of(height, 0.2, 0.2);
    assertEquals(printed, layers.printed(), 1e-9);
    assertEquals(printed - height, layers.error(), 1e-9);
    assertTrue(Math.abs(layers.error()) <= 0.1 + 1e-9 || height < 0.2);
  }

  /** What is said to hit a height does hit it. */
  @ParameterizedTest
  @CsvSource({"4.25, 0.2, 0.2", "4.29, 0.2, 0.2", "7.777, 0.3, 0.25", "12.34, 0.16, 0.12"})
  void remedies_hitTheHeight(double height, double first, double layer) {
    LayerHeight plain = LayerHeight.of(height, first, layer);
    plain.firstLayerToHit().ifPresent(to -> assertEquals(0, LayerHeight.of(height, to, layer).error(), 1e-9));
    assertTrue(plain.layerToHit().isPresent());
    assertEquals(0, LayerHeight.of(height, first, plain.layerToHit().getAsDouble()).error(), 1e-9);
    assertFalse(plain.isExact());
  }

  @Test
  void of_lessThanTheFirstLayer_hasNoLayerToHit() {
    assertTrue(LayerHeight.of(0.1, 0.2, 0.2).layerToHit().isEmpty());
    assertTrue(LayerHeight.of(0.1, 0.2, 0.2).firstLayerToHit().isEmpty());
  }

  /** A floor at 27.46 goes to 27.4 and a top at 30 stays: 2.6 instead of 2.54. */
  @Test
  void between_floorAndTop_bothGoToTheirLayers() {
    assertEquals(2.6, LayerHeight.between(27.46, 30, 0.2, 0.2), 1e-9);
    assertEquals(0, LayerHeight.between(1.04, 1.08, 0.2, 0.2), 1e-9);
  }

  @Test
  void read_statedHeights_tellsThoseBetweenLayers() {
    PrintLimits limits = PrintLimits.standard().with(Limit.LAYER, 0.3).with(Limit.FIRST_LAYER, 0.3);
    Specimen specimen = new Specimen(Specimens.proven(Specimens.box(0, 0, 5, 10, 10, 8)), limits,
        Map.of("pocket-floor", 4.66), Workers.of(1));
    Reading reading = new HeightGauge().read(specimen);
    Concern concern = reading.concerns().get(0);
    assertEquals("between-layers", concern.rule());
    assertEquals(0.14, concern.measured(), 1e-9);
    assertEquals(9.66, concern.z(), 1e-9);
    assertEquals("pocket-floor 4.66 mm prints as 4.8 mm, 0.14 mm more: first layer 0.3 and 15 x 0.3", concern.message());
    assertEquals("Set the layer height to 0.2907 mm to hit it.", concern.advice());
    assertEquals(4.8, reading.facts().get(0).value(), 1e-9);
  }

  @Test
  void read_noStatedHeights_looksAtTheWhole() {
    Reading reading = new HeightGauge().read(Specimens.of(Specimens.box(0, 0, 5, 10, 10, 8)));
    assertEquals("height 8 mm comes out exactly: first layer 0.2 and 39 x 0.2", reading.facts().get(0).words());
    assertTrue(reading.concerns().isEmpty());
    Reading between = new HeightGauge().read(Specimens.of(Specimens.box(0, 0, 5, 10, 10, 8.1)));
    assertTrue(between.facts().get(0).words().contains("0.1 mm"), between.facts().toString());
    assertTrue(between.concerns().isEmpty());
  }
}
