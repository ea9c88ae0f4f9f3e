package wherefrom.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Rows, records, maps, lists, texts, numbers and truth values as JSON (RFC 8259). A record is an
 * object: an empty optional is left out of it, and the fields of a {@link Row} in it stand there as
 * its own.
 */
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

  /** The fields of a record's object. */
  static Map<String, Object> fields(Record row) {
    Map<String, Object> fields = new LinkedHashMap<>();
    for (RecordComponent component : row.getClass().getRecordComponents()) {
      Object value = value(row, component);
      if (value instanceof Row inner) {
        fields.putAll(inner.fields());
      } else if (!(value instanceof Optional<?> maybe)) {
        fields.put(component.getName(), value);
      } else if (maybe.isPresent()) {
        fields.put(component.getName(), maybe.get());
      }
    }
    return fields;
  }

  /** An object of names and their values by turns, for what no record can name. */
  static Map<String, Object> object(Object... namesAndValues) {
    Map<String, Object> fields = new LinkedHashMap<>();
    for (int at = 0; at < namesAndValues.length; at += 2) {
      fields.put(String.valueOf(namesAndValues[at]), namesAndValues[at + 1]);
    }
    return fields;
  }

  /** The text of a record: what is only told, or all its values as cells. */
  static String told(Record row) {
    List<Object> values = new ArrayList<>();
    for (RecordComponent component : row.getClass().getRecordComponents()) {
      Object value = value(row, component);
      if (value instanceof Row.Beside told) {
        return told.text();
      }
      values.add(value);
    }
    return Answer.cells(values.toArray());
  }

  private static Object value(Record row, RecordComponent component) {
    try {
      return component.getAccessor().invoke(row);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void write(JsonGenerator json, Object value) throws IOException {
    if (value instanceof Row row) {
      write(json, row.fields());
    } else if (value instanceof Record row) {
      write(json, fields(row));
    } else if (value instanceof Map<?, ?> object) {
      writeObject(json, object);
    } else if (value instanceof Collection<?> list) {
      writeArray(json, list);
    } else if (value instanceof Boolean truth) {
      json.writeBoolean(truth);
    } else if (value instanceof Number number) {
      json.writeNumber(number.toString());
    } else {
      json.writeString(String.valueOf(value));
    }
  }

  private static void writeObject(JsonGenerator json, Map<?, ?> object) throws IOException {
    json.writeStartObject();
    for (Map.Entry<?, ?> field : object.entrySet()) {
      json.writeFieldName(String.valueOf(field.getKey()));
      write(json, field.getValue());
    }
    json.writeEndObject();
  }

  private static void writeArray(JsonGenerator json, Collection<?> list) throws IOException {
    json.writeStartArray();
    for (Object element : list) {
      write(json, element);
    }
    json.writeEndArray();
  }
}
