package outrigger.generator.layout;

import java.util.ArrayList;
import java.util.List;
import outrigger.generator.param.Texts;
import outrigger.generator.param.Unit;

/** An arrangement in words, one line each. */
public final class LayoutText {
  private static final double SHOWN = 1000;

  private LayoutText() {}

  /** Where everything lies, what does not, and what would fit where. */
  public static List<String> lines(Arrangement arrangement) {
    List<String> lines = new ArrayList<>();
    arrangement.laid().forEach(laid -> lines.add(laid(laid)));
    arrangement.out().forEach(out -> lines.add(out(out)));
    arrangement.fits().forEach(fit -> lines.add(fit.item().name() + " alone in " + fit.room().name() + ": "
        + (fit.lack().isNone() ? "fits" : lack(fit.lack()))));
    return lines;
  }

  private static String laid(Laid laid) {
    Laid.Free free = laid.free();
    return laid.item().name() + " lies in " + laid.room().name() + " " + (laid.crosswise() ? "crosswise" : "lengthwise")
        + ", its middle at x " + number(laid.x()) + ", y " + mm(laid.y()) + "; free " + number(free.front())
        + " ahead, " + number(free.rear()) + " behind, " + number(free.left()) + " left, " + number(free.right())
        + " right, " + mm(free.above()) + " above" + cables(laid);
  }

  private static String cables(Laid laid) {
    return laid.cables() == CableSide.NONE ? ""
        : "; cables leave " + switch (laid.cables()) {
          case FRONT -> "forward";
          case REAR -> "rearward";
          case LEFT -> "to the left";
          case RIGHT -> "to the right";
          default -> "upward";
        } + ", " + mm(laid.asks(laid.cables())) + " kept for them";
  }

  /** Why an item found no place, one clause for each room. */
  public static String out(LeftOut out) {
    if (out.wants().isEmpty()) {
      return out.item().name() + " finds no place: there is no room it may go to";
    }
    return out.item().name() + " takes " + number(out.item().takesLength()) + " x " + number(out.item().takesWidth()) + " x "
        + mm(out.item().takesHeight()) + " with the room round it and finds no place: "
        + String.join("; ", out.wants().stream().map(LayoutText::want).toList());
  }

  private static String want(LeftOut.Want want) {
    String room = want.room().name() + " (" + size(want.room()) + ") ";
    if (!want.alone().isNone()) {
      return room + "is too small even when empty: " + lack(want.alone());
    }
    if (want.moreLength() == 0) {
      return room + "takes " + Packing.MOST + " items at most";
    }
    return room + "takes it alone, but beside what lies there would have to be " + mm(want.moreLength())
        + " longer or " + mm(want.moreWidth()) + " wider";
  }

  private static String size(Room room) {
    String least = number(room.narrowest());
    String most = number(room.widest());
    return number(room.length()) + " long, " + (least.equals(most) ? most : least + " to " + most) + " wide, "
        + number(room.height()) + " high";
  }

  /** By how much an item is too large, such as {@code 2.5 mm too long and 1 mm too high}. */
  public static String lack(Lack lack) {
    List<String> ways = new ArrayList<>();
    add(ways, lack.length(), "too long");
    add(ways, lack.width(), "too wide");
    add(ways, lack.height(), "too high");
    return String.join(" and ", ways);
  }

  private static void add(List<String> ways, double mm, String what) {
    if (mm > 0) {
      ways.add(mm(mm) + " " + what);
    }
  }

  private static String number(double mm) {
    double rounded = Math.rint(mm * SHOWN) / SHOWN;
    return Texts.number(rounded == 0 ? 0 : rounded);
  }

  private static String mm(double mm) {
    double rounded = Math.rint(mm * SHOWN) / SHOWN;
    return Texts.number(rounded == 0 ? 0 : rounded, Unit.MM);
  }
}
