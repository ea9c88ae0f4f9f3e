package wherefrom.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Map;

/** Maps, lists, texts, numbers and truth values as JSON (RFC 8259). */
final class Json {
  private Json() {}

  static String text(Object value) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      write(json, value);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static void write(JsonGenerator json, Object value) throws IOException {
    if (value instanceof Map<?, ?> object) {
      json.writeStartObject();
      for (Map.Entry<?, ?> field : object.entrySet()) {
        json.writeFieldName(String.valueOf(field.getKey()));
        write(json, field.getValue());
      }
      json.writeEndObject();
    } else if (value instanceof Iterable<?> list) {
      json.writeStartArray();
      for (Object element : list) {
        write(json, element instanceof Fields fields ? fields.all() : element);
      }
      json.writeEndArray();
    } else if (value instanceof Boolean truth) {
      json.writeBoolean(truth);
    } else if (value instanceof Number number) {
      json.writeNumber(number.toString());
    } else {
      json.writeString(String.valueOf(value));
    }
  }
}
