package outrigger.generator.cli;

import java.util.List;
import outrigger.generator.accessory.Accessory;
import outrigger.generator.param.ParamSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.ISetter;
import picocli.CommandLine.Model.OptionSpec;

/** Describes {@code make} for one kind to the option parser; its options are what the kind declares, and a few more. */
final class KindOptions {
  static final String NAME = "--name";
  static final String OUT = "--out";
  static final String MATERIAL = "--material";
  static final String PICTURE = "--picture";
  /** Options that take a text and are no parameters. */
  static final List<String> TEXTS = List.of(NAME, MATERIAL, OUT);

  private KindOptions() {}

  static <P extends Record> CommandSpec spec(Root root, Accessory<P> accessory) {
    OptionTexts texts = new OptionTexts();
    ParamSpec<P> parameters = ParamSpec.of(accessory.parameters());
    PrintOptions printing = new PrintOptions();
    WriteOptions writing = new WriteOptions();
    CommandSpec spec = CommandSpec.wrapWithoutInspection(
        new KindCommand<>(root, accessory, parameters, texts, printing, writing));
    spec.usageMessage().header(accessory.summary().replace("%", "%%")).sortOptions(false).abbreviateSynopsis(true);
    ParameterOptions<P> options = new ParameterOptions<>(spec, parameters, "", texts);
    options.add(NAME, "NAME", "What the file is called, without .stl. (default " + accessory.kind() + ")");
    options.add(MATERIAL, "MATERIAL", "What it is printed in, to tell its weight. (a name of the table materials)");
    options.add(OUT, "FOLDER", "Where the file goes. (default " + Arguments.OUT + ")");
    spec.addOption(OptionSpec.builder(PICTURE).type(boolean.class).arity("0")
        .description("Draw the part beside its file, NAME.png, and what was measured on it, NAME.map.png.")
        .setter(new ISetter() {
          @Override
          public <T> T set(T value) {
            texts.forget(PICTURE);
            if (Boolean.TRUE.equals(value)) {
              texts.add(PICTURE, "");
            }
            return null;
          }
        }).build());
    spec.addMixin("printing", CommandSpec.forAnnotatedObject(printing));
    spec.addMixin("writing", CommandSpec.forAnnotatedObject(writing));
    return spec;
  }
}
