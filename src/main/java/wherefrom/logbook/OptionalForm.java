package wherefrom.logbook;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.BeanProperty;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.ContextualDeserializer;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import java.util.Optional;

/** A value that may be absent: the value's own form, or an empty text. */
final class OptionalForm {
  private OptionalForm() {}

  @SuppressWarnings("rawtypes")
  static final class Writer extends StdSerializer<Optional> {
    Writer() {
      super(Optional.class);
    }

    /** For fields that are left out where they say nothing. */
    @Override
    public boolean isEmpty(SerializerProvider provider, Optional value) {
      return value.isEmpty();
    }

    @Override
    public void serialize(Optional value, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      if (value.isPresent()) {
        provider.defaultSerializeValue(value.get(), out);
      } else {
        out.writeString("");
      }
    }
  }

  @SuppressWarnings("rawtypes")
  static final class Reader extends StdDeserializer<Optional> implements ContextualDeserializer {
    /** What is in it is known once the field is. */
    Reader() {
      super(Object.class);
    }

    private Reader(JavaType of) {
      super(of);
    }

    @Override
    public JsonDeserializer<?> createContextual(
        DeserializationContext context, BeanProperty field) {
      return new Reader(field.getType().containedType(0));
    }

    @Override
    public Optional<?> deserialize(JsonParser in, DeserializationContext context)
        throws IOException {
      return in.getValueAsString("").isEmpty()
          ? Optional.empty()
          : Optional.of(context.readValue(in, _valueType));
    }
  }
}
