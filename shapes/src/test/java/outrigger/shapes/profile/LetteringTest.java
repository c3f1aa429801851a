package outrigger.shapes.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import outrigger.shapes.num.ShapeException;

class LetteringTest {
  private static final String ALL = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789+-.,/()#:";
  private static final double HEIGHT = 4;
  /** How far a chord of 67.5 degrees stays inside the round join it stands for, as a part of the stroke width. */
  private static final double END = 0.5 * (1 - Math.cos(Math.PI * 3 / 16)) + 0.001;

  @Test
  void text_everyCharacter_drawnInsideItsBoxAndUnlikeTheOthers() {
    Set<Profile> seen = new HashSet<>();
    for (int i = 0; i < ALL.length(); i++) {
      String c = ALL.substring(i, i + 1);
      Profile ink = Profile.text(c, HEIGHT, 0.5);
      assertTrue(ink.minY() >= 0 && ink.maxY() <= HEIGHT, c);
      assertEquals(0, ink.minX(), 0.5 * END, c);
      assertEquals(Profile.textWidth(c, HEIGHT, 0.5), ink.maxX(), 0.5 * END, c);
      assertTrue(seen.add(ink), c);
    }
  }

  @Test
  void text_capitals_asHighAsAskedFor() {
    for (char c = 'A'; c <= 'Z'; c++) {
      Profile ink = Profile.text("" + c, 5, 0.8);
      assertEquals(0, ink.minY(), 0.8 * END, "" + c);
      assertEquals(5, ink.maxY(), 0.8 * END, "" + c);
    }
  }

  @Test
  void text_widestStroke_countersStayOpen() {
    assertEquals(2, Profile.text("8", HEIGHT, 1).regions().get(0).holes().size());
    assertEquals(2, Profile.text("B", HEIGHT, 1).regions().get(0).holes().size());
    assertEquals(1, Profile.text("O", HEIGHT, 1).regions().get(0).holes().size());
    assertEquals(1, Profile.text("E", HEIGHT, 1).regions().size());
  }

  @Test
  void text_separateLetters_separateRegions() {
    assertEquals(4, Profile.text("L1 T7", HEIGHT, 0.6).regions().size());
    assertEquals(2, Profile.text(":", HEIGHT, 0.6).regions().size());
  }

  @Test
  void text_lowerCase_drawnAsCapitalsSaveUnits() {
    assertEquals(Profile.text("HAMMER", HEIGHT, 0.5), Profile.text("Hammer", HEIGHT, 0.5));
    assertNotEquals(Profile.text("12 MM", HEIGHT, 0.5), Profile.text("12 mm", HEIGHT, 0.5));
    assertNotEquals(Profile.text("8X3", HEIGHT, 0.5), Profile.text("8x3", HEIGHT, 0.5));
    assertEquals(Profile.text("AXLE", HEIGHT, 0.5), Profile.text("axle", HEIGHT, 0.5));
  }

  @Test
  void text_unknownCharacter_refusedByName() {
    String message = assertThrows(ShapeException.class, () -> Profile.text("3\u00b5", HEIGHT, 0.5)).getMessage();
    assertTrue(message.startsWith("text holds '\u00b5' (U+00B5), which the lettering lacks"), message);
    assertTrue(assertThrows(ShapeException.class, () -> Profile.text("a\nb", HEIGHT, 0.5)).getMessage()
        .contains("U+000A"));
    assertTrue(assertThrows(ShapeException.class, () -> Profile.text("\u0001", HEIGHT, 0.5)).getMessage()
        .contains("U+0001"));
  }

  @Test
  void text_emptyOrBoldStroke_refused() {
    assertThrows(ShapeException.class, () -> Profile.text("  ", HEIGHT, 0.5));
    String message = assertThrows(ShapeException.class, () -> Profile.text("A", 4, 1.5)).getMessage();
    assertTrue(message.contains("stroke width is 1.5 mm, more than a quarter of the text height of 4 mm, 1 mm"),
        message);
  }

  @Test
  void text_lineOfWords_widthIsItsBounds() {
    Profile ink = Profile.text("TIDEWICK 24/7", 6, 0.9);
    assertEquals(Profile.textWidth("TIDEWICK 24/7", 6, 0.9), ink.maxX(), 0.9 * END);
    assertFalse(ink.isEmpty());
  }
}
