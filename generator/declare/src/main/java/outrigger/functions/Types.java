package outrigger.functions;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Types as class files write them (chapter 4.3): {@code I} for an int, {@code Lname;} for a class. */
final class Types {
  static final String OBJECT = "Ljava/lang/Object;";
  private static final Map<String, String> WRAPPERS = Map.of("Z", "java/lang/Boolean", "B", "java/lang/Byte", "C",
      "java/lang/Character", "S", "java/lang/Short", "I", "java/lang/Integer", "J", "java/lang/Long", "F",
      "java/lang/Float", "D", "java/lang/Double");
  private static final Map<String, String> UNWRAPPING = Map.of("Z", "booleanValue", "B", "byteValue", "C", "charValue", "S",
      "shortValue", "I", "intValue", "J", "longValue", "F", "floatValue", "D", "doubleValue");
  private static final String NARROW = "BSCI";

  private Types() {}

  /** The types a method takes. */
  static List<String> taken(String descriptor) {
    List<String> types = new ArrayList<>();
    for (int i = 1; descriptor.charAt(i) != ')';) {
      int end = i;
      while (descriptor.charAt(end) == '[') {
        end++;
      }
      end = descriptor.charAt(end) == 'L' ? descriptor.indexOf(';', end) + 1 : end + 1;
      types.add(descriptor.substring(i, end));
      i = end;
    }
    return types;
  }

  /** The type a method gives, {@code V} for none. */
  static String given(String descriptor) {
    return descriptor.substring(descriptor.indexOf(')') + 1);
  }

  static boolean isPrimitive(String type) {
    return type.length() == 1;
  }

  /** How many slots a value takes. */
  static int slots(String type) {
    return type.equals("V") ? 0 : type.equals("J") || type.equals("D") ? 2 : 1;
  }

  /** The class of a type as constants name it: arrays by their type. */
  static String className(String type) {
    return type.startsWith("L") ? type.substring(1, type.length() - 1) : type;
  }

  /** The class that boxes a primitive type. */
  static String wrapper(String primitive) {
    return WRAPPERS.get(primitive);
  }

  /** The method of that class that gives the primitive value. */
  static String unwrapping(String primitive) {
    return UNWRAPPING.get(primitive);
  }

  /** The primitive type that a class boxes, empty for other classes. */
  static String unwrapped(String type) {
    return WRAPPERS.entrySet().stream().filter(e -> ("L" + e.getValue() + ";").equals(type)).map(Map.Entry::getKey)
        .findFirst().orElse("");
  }

  /** The place of a primitive type among int, long, float, double, for which instructions stand in this order; 4 for others. */
  static int family(String type) {
    return switch (type.charAt(0)) {
      case 'J' -> 1;
      case 'F' -> 2;
      case 'D' -> 3;
      case 'L', '[' -> 4;
      default -> 0;
    };
  }

  /** Whether a primitive value may become one of another type without loss of its meaning (Java Language Spec. 5.1.2). */
  static boolean widens(String from, String to) {
    if (from.equals(to)) {
      return true;
    }
    if (family(from) == 0 && family(to) == 0) {
      return to.equals("I") && NARROW.contains(from) || from.equals("B") && to.equals("S");
    }
    return !from.equals("Z") && family(to) > family(from) && family(to) < 4;
  }
}
