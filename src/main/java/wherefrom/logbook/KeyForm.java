package wherefrom.logbook;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import java.util.Optional;
import java.util.function.Function;

/** Values that stand in the file as a key, such as {@code pushrod@3EX}. */
final class KeyForm {
  private KeyForm() {}

  /** Writes a value as its key. */
  static final class Writer<T> extends StdSerializer<T> {
    private final transient Function<T, String> key;

    Writer(Class<T> type, Function<T, String> key) {
      super(type);
      this.key = key;
    }

    @Override
    public void serialize(T value, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      out.writeString(key.apply(value));
    }
  }

  /** Reads a value back from its key. */
  static final class Reader<T> extends StdDeserializer<T> {
    private final transient Function<String, Optional<? extends T>> find;

    Reader(Class<?> type, Function<String, Optional<? extends T>> find) {
      super(type);
      this.find = find;
    }

    @Override
    public T deserialize(JsonParser in, DeserializationContext context) throws IOException {
      String key = in.getValueAsString("");
      Optional<? extends T> found = find.apply(key);
      if (found.isEmpty()) {
        throw context.weirdStringException(key, _valueClass, "\"" + key + "\" is not known");
      }
      return found.get();
    }
  }
}
