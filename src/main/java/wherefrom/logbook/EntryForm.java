package wherefrom.logbook;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import java.util.function.Function;

/**
 * An entry whose fields in the file are others than its components: the record {@code F} has the
 * fields of the file.
 */
final class EntryForm {
  private EntryForm() {}

  /** Writes an entry as its form. */
  static final class Writer<E, F> extends StdSerializer<E> {
    private final transient Function<E, F> form;

    Writer(Class<E> type, Function<E, F> form) {
      super(type);
      this.form = form;
    }

    @Override
    public void serialize(E value, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      provider.defaultSerializeValue(form.apply(value), out);
    }
  }

  /** Reads an entry from its form. */
  static final class Reader<E, F> extends StdDeserializer<E> {
    private final Class<F> fields;
    private final transient Function<F, E> entry;

    Reader(Class<E> type, Class<F> fields, Function<F, E> entry) {
      super(type);
      this.fields = fields;
      this.entry = entry;
    }

    @Override
    public E deserialize(JsonParser in, DeserializationContext context) throws IOException {
      F form = context.readValue(in, fields);
      try {
        return entry.apply(form);
      } catch (IllegalArgumentException e) {
        throw JsonMappingException.from(in, String.valueOf(e.getMessage()), e);
      }
    }
  }
}
