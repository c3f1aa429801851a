package outrigger.generator.plan;

import java.util.Optional;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Given;
import outrigger.generator.param.InputException;
import outrigger.generator.param.NearMiss;
import outrigger.generator.param.Origin;
import outrigger.generator.param.Texts;
import outrigger.presets.Material;
import outrigger.presets.Shelf;

/** Looks up what parts are printed in. */
public final class Materials {
  private Materials() {}

  /**
   * The material of a name given, if one was given.
   *
   * @throws InputException if no material has that name
   */
  public static Optional<Material> find(Shelf shelf, Optional<Given> given) {
    Optional<Material> material = given.flatMap(g -> shelf.find(Material.class, g.text()));
    if (given.isPresent() && material.isEmpty()) {
      throw new InputException(unknown(shelf, given.get().text(), given.get().origin()));
    }
    return material;
  }

  static Fault unknown(Shelf shelf, String name, Origin where) {
    return new Fault("", "material", "material is " + Texts.quoted(name) + " (" + where.words()
        + "), and no material of that name is on the shelf", name, "a material preset",
        NearMiss.advice(name, shelf.names(Material.class)), where);
  }
}
