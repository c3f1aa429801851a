package outrigger.generator.cli;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import outrigger.generator.accessory.Accessory;
import outrigger.generator.accessory.Kinds;
import outrigger.generator.param.ParamSpec;
import outrigger.generator.param.Parameter;

/**
 * Reads the usual form of one command, {@code make KIND --option text ...}, without the option parser, which takes longer to
 * start than a small part takes to make. What is not plainly of this form, and with it all that is wrong, is left to the
 * parser, which has the words for it. A test holds the two to the same parts.
 */
final class PlainMake {
  private static final List<String> FLAGS = List.of(Root.JSON, KindOptions.PICTURE, WriteOptions.ANYWAY);
  private static final List<String> OTHER_TEXTS = List.of(Root.PRESETS, PrintOptions.LIMIT, PrintOptions.LOAD);

  private PlainMake() {}

  /** The command, or nothing where the parser is to read it. */
  static Optional<Command> read(Kinds kinds, String... args) {
    if (args.length < 2 || !args[0].equals("make")) {
      return Optional.empty();
    }
    for (Accessory<?> accessory : kinds.all()) {
      if (accessory.kind().equals(args[1])) {
        return read(accessory, args);
      }
    }
    return Optional.empty();
  }

  private static <P extends Record> Optional<Command> read(Accessory<P> accessory, String... args) {
    ParamSpec<P> parameters = ParamSpec.of(accessory.parameters());
    OptionTexts texts = new OptionTexts();
    return isPlain(known(parameters), texts, args) ? Optional.of(new KindCommand<>(Root.of(texts), accessory, parameters,
        texts, PrintOptions.of(texts), WriteOptions.of(texts))) : Optional.empty();
  }

  /** The options that take a text. */
  private static Set<String> known(ParamSpec<?> parameters) {
    Set<String> known = new HashSet<>(KindOptions.TEXTS);
    known.addAll(OTHER_TEXTS);
    for (Parameter parameter : parameters.parameters()) {
      known.add(OptionTexts.option(parameter));
    }
    return known;
  }

  /** Takes all texts; false at the first argument that is not plain. */
  private static boolean isPlain(Set<String> known, OptionTexts texts, String... args) {
    for (int i = 2; i < args.length; i++) {
      int sign = args[i].indexOf('=');
      String option = sign < 0 ? args[i] : args[i].substring(0, sign);
      String text = sign < 0 ? "" : args[i].substring(sign + 1);
      boolean flag = sign < 0 && FLAGS.contains(option);
      if (sign < 0 && !flag && i + 1 < args.length) {
        i++;
        text = args[i];
      }
      boolean plain = flag || known.contains(option) && !text.isEmpty() && text.charAt(0) != '-';
      if (!plain || texts.has(option) && !option.equals(PrintOptions.LIMIT)) {
        return false;
      }
      texts.add(option, text);
    }
    return true;
  }
}
