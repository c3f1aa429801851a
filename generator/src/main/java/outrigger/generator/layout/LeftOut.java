package outrigger.generator.layout;

import java.util.List;

/**
 * An item that found no place, and what would have to be larger.
 *
 * @param wants one for each room it may go to
 */
public record LeftOut(Item item, List<Want> wants) {
  /**
   * What one room lacks.
   *
   * @param alone by how much it is too small even when empty
   * @param moreLength how much longer it would have to be to take the item beside those laid there, mm; 0 where the item
   *     does not fit alone
   * @param moreWidth how much wider, in place of longer, mm
   */
  public record Want(Room room, Lack alone, double moreLength, double moreWidth) {}

  public LeftOut {
    wants = List.copyOf(wants);
  }
}
