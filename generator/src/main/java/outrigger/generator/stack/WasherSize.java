package outrigger.generator.stack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import outrigger.generator.param.BadDimension;
import outrigger.generator.param.NearMiss;
import outrigger.presets.Shelf;
import outrigger.presets.Washer;

/**
 * Washers at hand.
 *
 * @param washers all washers of a size, or one
 * @param count how many there are
 */
public record WasherSize(List<Washer> washers, int count) {
  public WasherSize {
    washers = List.copyOf(washers);
  }

  /** Reads {@code SIZE}, {@code NAME} or either with {@code :COUNT}, the name that of a washer. */
  public static WasherSize parse(String text, Shelf shelf) {
    Counted counted = Counted.of("washers", text);
    List<Washer> fitting = shelf.items(Washer.class).stream()
        .filter(w -> w.size().equalsIgnoreCase(counted.name()) || w.name().equalsIgnoreCase(counted.name())).toList();
    if (fitting.isEmpty()) {
      List<String> known = shelf.items(Washer.class).stream().flatMap(w -> Stream.of(w.size(), w.name())).distinct()
          .toList();
      throw new BadDimension("washers", "and no washer of that size or name is on the shelf",
          NearMiss.advice(counted.name(), known));
    }
    WasherSize size = new WasherSize(fitting, counted.count());
    if (counted.count() != Piece.ANY && size.pieces().size() > 1) {
      throw new BadDimension("washers", "but washers of that size come in several thicknesses, and a count must say of "
          + "which", "Name them, such as " + fitting.get(0).name() + ":" + counted.count() + ".");
    }
    return size;
  }

  /** As kinds of piece: washers of one thickness are one kind, since they stack alike. */
  List<Piece> pieces() {
    Map<List<Long>, List<Washer>> alike = new LinkedHashMap<>();
    for (Washer washer : washers) {
      alike.computeIfAbsent(List.of(Nano.of(washer.thickness()), Nano.of(washer.thicknessTolerance())),
          key -> new ArrayList<>()).add(washer);
    }
    List<Piece> pieces = new ArrayList<>();
    alike.forEach((sizes, same) -> {
      List<String> names = same.stream().map(Washer::name).toList();
      String name = names.stream().collect(Collectors.joining(" or ")) + " washer";
      pieces.add(new Piece(Piece.Sort.WASHER, name, names, sizes.get(0), sizes.get(1), count));
    });
    return pieces;
  }
}
