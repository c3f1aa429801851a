package outrigger.generator.joint;

import outrigger.presets.DiscMagnet;
import outrigger.presets.HeatSetInsert;
import outrigger.presets.Nut;
import outrigger.presets.Screw;
import outrigger.presets.Washer;

/** What hardware is called in lists, one of each. */
public final class Articles {
  private Articles() {}

  /** A screw of a length, such as {@code M3-socket x 10}. */
  public static Piece of(Screw screw, double length) {
    return new Piece(Piece.Kind.SCREW, screw.name() + " x " + Lengths.words(length), 1);
  }

  /** A nut, such as {@code M3 nut (ISO 4032)}. */
  public static Piece of(Nut nut) {
    String size = nut.name().contains("-") ? nut.name().substring(0, nut.name().indexOf('-')) : nut.name();
    return new Piece(Piece.Kind.NUT, size + " nut (" + nut.standard() + ")", 1);
  }

  /** A washer, such as {@code M3 washer (ISO 7089)}. */
  public static Piece of(Washer washer) {
    return new Piece(Piece.Kind.WASHER, washer.size() + " washer (" + washer.standard() + ")", 1);
  }

  /** An insert, such as {@code M3-short insert}. */
  public static Piece of(HeatSetInsert insert) {
    return new Piece(Piece.Kind.INSERT, insert.name() + " insert", 1);
  }

  /** A magnet, such as {@code 6x2 magnet}. */
  public static Piece of(DiscMagnet magnet) {
    return new Piece(Piece.Kind.MAGNET, magnet.name() + " magnet", 1);
  }
}
