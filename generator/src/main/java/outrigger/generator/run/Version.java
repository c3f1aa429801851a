package outrigger.generator.run;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The program's name and version. */
public final class Version {
  private Version() {}

  /** Such as {@code outrigger 1.2.0}. */
  public static String words() {
    try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
      Properties properties = new Properties();
      properties.load(in);
      return "outrigger " + properties.getProperty("version");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
