package outrigger.generator.param;

import java.util.Locale;
import java.util.Optional;
import outrigger.presets.Item;
import outrigger.presets.Shelf;

/**
 * The name of an item on the shelf.
 *
 * @param table type of the items
 */
record PresetForm(Class<? extends Item> table) implements Form {
  @Override
  public String kind() {
    return "preset";
  }

  @Override
  public String placeholder() {
    return Texts.kebab(table.getSimpleName()).substring(1).toUpperCase(Locale.ROOT);
  }

  @Override
  public String allowed() {
    return "";
  }

  @Override
  public Object parse(String text, Shelf shelf) throws BadText {
    String name = text.strip();
    Optional<? extends Item> item = shelf.find(table, name);
    if (item.isPresent()) {
      return item.get();
    }
    String noun = placeholder().toLowerCase(Locale.ROOT).replace('-', ' ');
    throw new BadText(Texts.quoted(text), "and no " + noun + " of that name is on the shelf", "a " + noun + " preset",
        NearMiss.advice(name, shelf.names(table)));
  }

  @Override
  public String print(Object value, String text) {
    return ((Item) value).name();
  }
}
