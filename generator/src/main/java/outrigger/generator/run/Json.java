package outrigger.generator.run;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import outrigger.generator.param.Texts;

/** Writes JSON, the same on every machine: plain ASCII, line feeds, numbers of at most six decimals. */
public final class Json {
  private final JsonGenerator generator;

  private Json(JsonGenerator generator) {
    this.generator = generator;
  }

  /** What is to be written. */
  @FunctionalInterface
  public interface Body {
    void write(Json json) throws IOException;
  }

  /** How one item of a list is written. */
  @FunctionalInterface
  public interface Item<T> {
    void write(Json json, T item) throws IOException;
  }

  /** An object as text, with a line feed at its end. */
  public static String text(Body body) {
    StringWriter text = new StringWriter();
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(indenter);
    printer.indentArraysWith(indenter);
    JsonFactory factory = JsonFactory.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();
    try (JsonGenerator generator = factory.createGenerator(text)) {
      generator.setPrettyPrinter(printer);
      generator.writeStartObject();
      body.write(new Json(generator));
      generator.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.append('\n').toString();
  }

  /** A text member. */
  public Json put(String name, String value) throws IOException {
    generator.writeStringField(name, value);
    return this;
  }

  /** A number member; a number that is not finite, as of a broken mesh, is null. */
  public Json put(String name, double value) throws IOException {
    generator.writeFieldName(name);
    number(value);
    return this;
  }

  /** A whole number member. */
  public Json put(String name, long value) throws IOException {
    generator.writeNumberField(name, value);
    return this;
  }

  /** A true or false member. */
  public Json put(String name, boolean value) throws IOException {
    generator.writeBooleanField(name, value);
    return this;
  }

  /** A list of numbers. */
  public Json numbers(String name, double... values) throws IOException {
    generator.writeArrayFieldStart(name);
    for (double value : values) {
      number(value);
    }
    generator.writeEndArray();
    return this;
  }

  /** A list of texts. */
  public Json texts(String name, List<String> values) throws IOException {
    generator.writeArrayFieldStart(name);
    for (String value : values) {
      generator.writeString(value);
    }
    generator.writeEndArray();
    return this;
  }

  /** An object member. */
  public Json object(String name, Body body) throws IOException {
    generator.writeObjectFieldStart(name);
    body.write(this);
    generator.writeEndObject();
    return this;
  }

  /** A list of objects. */
  public <T> Json objects(String name, List<? extends T> items, Item<T> each) throws IOException {
    generator.writeArrayFieldStart(name);
    for (T item : items) {
      generator.writeStartObject();
      each.write(this, item);
      generator.writeEndObject();
    }
    generator.writeEndArray();
    return this;
  }

  private void number(double value) throws IOException {
    if (Double.isFinite(value)) {
      generator.writeNumber(Texts.number(value));
    } else {
      generator.writeNull();
    }
  }
}
