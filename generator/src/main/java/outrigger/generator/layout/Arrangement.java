package outrigger.generator.layout;

import java.util.List;

/**
 * Items shared out over rooms.
 *
 * @param laid those in their places, in the order given
 * @param out those that found none
 * @param fits every item with every room it may go to, as if the room were empty
 */
public record Arrangement(List<Laid> laid, List<LeftOut> out, List<Fit> fits) {
  public Arrangement {
    laid = List.copyOf(laid);
    out = List.copyOf(out);
    fits = List.copyOf(fits);
  }
}
