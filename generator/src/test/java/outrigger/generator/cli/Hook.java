package outrigger.generator.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import outrigger.generator.accessory.Accessory;
import outrigger.generator.accessory.Kinds;
import outrigger.generator.accessory.Part;
import outrigger.generator.joint.Fixings;
import outrigger.generator.joint.Piece;
import outrigger.generator.accessory.Words;
import outrigger.generator.param.BadDimension;
import outrigger.presets.Screw;
import outrigger.presets.Shelf;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** A part that only tests make: a block, or a set of them. Some labels make it fail in every way a part can. */
final class Hook implements Accessory<HookParams> {
  static final Kinds KINDS = new Kinds(List.of(new Hook()));

  @Override
  public String kind() {
    return "hook";
  }

  @Override
  public String summary() {
    return "A block to try things on.";
  }

  @Override
  public Class<HookParams> parameters() {
    return HookParams.class;
  }

  @Override
  public List<Part> build(HookParams p, Shelf shelf) {
    if (2 * p.wallThickness() >= p.width()) {
      throw new BadDimension("wall-thickness", "two walls of " + Words.mm(p.wallThickness()) + " leave no room in a "
          + "width of " + Words.mm(p.width()), "Lower wall-thickness or raise width.");
    }
    switch (p.label()) {
      case "lost" -> shelf.get(Screw.class, "M3-sockt");
      case "defect" -> throw new IllegalStateException("a defect made on purpose");
      default -> { }
    }
    List<Part> parts = new ArrayList<>();
    for (double thickness : p.set()) {
      parts.add(part(Words.number(thickness), block(p.width(), thickness), thickness));
    }
    Solid block = block(p.width(), p.height());
    Solid solid = p.label().equals("touch") ? block.join(block.move(p.width(), p.width(), 0)) : block;
    return parts.isEmpty() ? List.of(part("", solid, p.height())) : parts;
  }

  private static Solid block(double width, double height) {
    return Prism.of(Profile.rectangle(width, width), 0, height);
  }

  private static Part part(String suffix, Solid solid, double height) {
    return new Part(suffix, solid, "Flat on the bed.", List.of("It is a block."), Map.of("height", height),
        new Fixings(List.of(), List.of(new Piece(Piece.Kind.OTHER, "M3-socket", 2))));
  }
}
