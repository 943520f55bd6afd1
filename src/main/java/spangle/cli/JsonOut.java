package spangle.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import spangle.measure.Figures;
import spangle.measure.Interval;
import spangle.measure.LowLikelyHigh;

/**
 * One JSON object for standard output, keys in the order they were put. Numbers are written with at
 * most ten significant figures, so that no binary dust shows; a number that is no number is null.
 * Written without data binding, because that alone would cost a question its quick answer.
 */
public final class JsonOut {
  private static final int FIGURES = 10;

  private final Map<String, @Nullable Object> members = new LinkedHashMap<>();

  /**
   * Adds a member: text, number, truth value, null, a list, a map, another {@code JsonOut}, a range
   * or a planning range. Anything else is written as its text.
   */
  public JsonOut put(String key, @Nullable Object value) {
    members.put(key, value);
    return this;
  }

  /** Prints the object and a line end. */
  public void print(PrintWriter out) {
    out.print(text());
    out.print('\n');
    out.flush();
  }

  /** The object as text. */
  public String text() {
    StringWriter text = new StringWriter();
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter);
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.configure(StreamWriteFeature.AUTO_CLOSE_TARGET.mappedFeature(), false);
      json.setPrettyPrinter(printer);
      write(json, members);
    } catch (IOException cannotHappenInMemory) {
      throw new UncheckedIOException(cannotHappenInMemory);
    }
    return text.toString();
  }

  private static void write(JsonGenerator json, @Nullable Object value) throws IOException {
    if (value == null) {
      json.writeNull();
    } else if (value instanceof JsonOut object) {
      write(json, object.members);
    } else if (value instanceof Map<?, ?> map) {
      writeMap(json, map);
    } else if (value instanceof Iterable<?> list) {
      json.writeStartArray();
      for (Object item : list) {
        write(json, item);
      }
      json.writeEndArray();
    } else if (value instanceof Number number) {
      writeNumber(json, number);
    } else if (value instanceof Boolean truth) {
      json.writeBoolean(truth);
    } else if (value instanceof Interval range) {
      write(json, new JsonOut().put("min", range.min()).put("max", range.max()));
    } else if (value instanceof LowLikelyHigh range) {
      write(
          json,
          new JsonOut()
              .put("low", range.low())
              .put("likely", range.likely())
              .put("high", range.high()));
    } else {
      json.writeString(value.toString());
    }
  }

  private static void writeMap(JsonGenerator json, Map<?, ?> map) throws IOException {
    json.writeStartObject();
    for (Map.Entry<?, ?> member : map.entrySet()) {
      json.writeFieldName(String.valueOf(member.getKey()));
      write(json, member.getValue());
    }
    json.writeEndObject();
  }

  private static void writeNumber(JsonGenerator json, Number number) throws IOException {
    if (number instanceof Integer || number instanceof Long) {
      json.writeNumber(number.longValue());
    } else if (Double.isFinite(number.doubleValue())) {
      json.writeNumber(Figures.significant(number.doubleValue(), FIGURES));
    } else {
      json.writeNull();
    }
  }
}
