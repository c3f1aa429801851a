package outrigger.presets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Programs make items too, so the records refuse what the table reader refuses. */
class ItemChecksTest {
  @Test
  void constructor_everyNumberOfEveryItem_refusesWhatIsNoSize() throws ReflectiveOperationException {
    for (TableInfo table : Shelf.standard().tables()) {
      Item item = Shelf.standard().items(table.type()).get(0);
      RecordComponent[] components = table.type().getRecordComponents();
      Object[] sound = new Object[components.length];
      for (int i = 0; i < components.length; i++) {
        sound[i] = components[i].getAccessor().invoke(item);
      }
      for (int i = 0; i < components.length; i++) {
        for (Object bad : badValues(sound[i])) {
          Object[] values = sound.clone();
          values[i] = bad;
          String called = table.key() + " " + components[i].getName() + " " + bad;
          InvocationTargetException refused = assertThrows(InvocationTargetException.class,
              () -> canonical(table.type(), components).newInstance(values), called);
          assertEquals(IllegalArgumentException.class, refused.getCause().getClass(), called);
        }
      }
    }
  }

  private static List<Object> badValues(Object sound) {
    if (sound instanceof Double) {
      return List.of(-1.0, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
    }
    return sound instanceof String ? List.of("", " ") : List.of(List.of(), List.of(-1.0), List.of(2.0, 2.0));
  }

  private static Constructor<?> canonical(Class<?> type, RecordComponent[] components)
      throws ReflectiveOperationException {
    Constructor<?> constructor = type.getDeclaredConstructor(
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
    constructor.setAccessible(true);
    return constructor;
  }
}
