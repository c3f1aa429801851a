package outrigger.generator.param;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.generator.accessory.spacer.SpacerParams;
import outrigger.presets.Shelf;

class DeclaredTest {
  record Nested(@Param(min = 1, def = "2", help = "A length.") double length) {}

  /** What Java's own reading of the annotations finds is the yardstick. */
  @Test
  void declarations_everyRecord_areWhatItsAnnotationsSay() {
    List<JavaClass> made = new ClassFileImporter().importPackages("outrigger.generator").stream()
        .filter(c -> c.isAssignableTo(Declared.class) && c.getSimpleName().endsWith("Declared") && !c.isInterface()).toList();
    assertTrue(made.size() >= 20, made.toString());
    for (JavaClass one : made) {
      Class<?> record = loaded(one.getName().replaceAll("Declared$", ""));
      assertEquals(new Reflected<>(record.asSubclass(Record.class)).declarations(),
          declared(one).declarations(), one.getName());
    }
  }

  private static Class<?> loaded(String name) {
    try {
      return Class.forName(name);
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Declared<?> declared(JavaClass one) {
    try {
      return (Declared<?>) loaded(one.getName()).getConstructor().newInstance();
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void make_valuesInOrder_givesTheRecord() {
    SpacerParams wide = ParamValues.record(SpacerParams.class, Shelf.standard(), "width", "14", "set", "2, 3");
    assertEquals(14, wide.width());
    assertEquals(List.of(2.0, 3.0), wide.set());
    assertEquals("M3-socket", wide.screw().name());
  }

  @Test
  void of_nestedRecord_isReadFromItsAnnotations() {
    assertEquals(2, ParamValues.record(Nested.class, Shelf.standard()).length());
    assertThrows(InputException.class, () -> ParamValues.record(Nested.class, Shelf.standard(), "length", "0.5"));
    assertFalse(ParamSpec.of(Nested.class).keys().isEmpty());
  }
}
