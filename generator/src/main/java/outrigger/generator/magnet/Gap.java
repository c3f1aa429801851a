package outrigger.generator.magnet;

import java.util.ArrayList;
import java.util.List;
import outrigger.generator.param.Texts;
import outrigger.presets.Printer;

/**
 * What lies between two faces, as it is printed.
 *
 * @param parts what it is made of
 * @param slack how much smaller or larger layers can make it, mm
 */
public record Gap(List<Part> parts, double slack) {
  /** A little more than half, as decimals in binary may fall short of it. */
  private static final double HALF = 0.5 + 1e-9;

  public Gap {
    parts = List.copyOf(parts);
  }

  /**
   * One thing in the gap.
   *
   * @param name what it is, in the trade's words
   * @param mm how thick it is, above 0
   */
  public record Part(String name, double mm) {}

  /** The gap of what was given; things of no thickness are left out. */
  static Gap of(HoldParams p) {
    List<Part> parts = new ArrayList<>();
    add(parts, "recess", p.recess());
    add(parts, "recess in the body", p.facingRecess());
    skin(parts, "skin", p.skin(), p.printer());
    skin(parts, "skin in the body", p.facingSkin(), p.printer());
    add(parts, "glue", p.glue());
    add(parts, "pad", p.pad());
    add(parts, "plating", p.facing() == Facing.STEEL ? p.plating() : 2 * p.plating());
    // Floor and rim of a pocket each come out on the nearest layer, so each may be half a layer off. Such errors come
    // from one printer and are added, not taken at random.
    int pockets = (p.recess() > 0 ? 1 : 0) + (p.facingRecess() > 0 ? 1 : 0);
    return new Gap(parts, pockets * p.printer().layer());
  }

  private static void add(List<Part> parts, String name, double mm) {
    if (mm > 0) {
      parts.add(new Part(name, mm));
    }
  }

  /**
   * A skin is one first layer and whole layers on it, whatever thickness was wanted; half a layer counts as one, since
   * the thicker skin holds less.
   */
  private static void skin(List<Part> parts, String name, double wanted, Printer printer) {
    if (wanted > 0) {
      double more = Math.max(0, Math.floor((wanted - printer.firstLayer()) / printer.layer() + HALF));
      double printed = printer.firstLayer() + more * printer.layer();
      boolean exact = Math.abs(printed - wanted) < 1e-9;
      parts.add(new Part(exact ? name : name + " (" + Texts.number(wanted) + " wanted)", printed));
    }
  }

  /** As it is meant to be, mm. */
  public double nominal() {
    return parts.stream().mapToDouble(Part::mm).sum();
  }

  /** Smallest it can come out, mm; 0 where the magnets touch. */
  public double least() {
    return Math.max(0, nominal() - slack);
  }

  /** Largest it can come out, mm. */
  public double greatest() {
    return nominal() + slack;
  }
}
