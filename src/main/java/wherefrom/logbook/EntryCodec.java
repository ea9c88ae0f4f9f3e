package wherefrom.logbook;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import wherefrom.job.entry.Act;
import wherefrom.job.entry.JobEntry;

/**
 * Entries as JSON and back. It is strict both ways: a field too many, a field too few or a value of
 * another type is an error, never a guess.
 */
final class EntryCodec {
  static final JsonMapper MAPPER =
      JsonMapper.builder()
          .addModule(new DomainModule())
          .visibility(PropertyAccessor.IS_GETTER, Visibility.NONE)
          .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
          .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
          .build();

  private EntryCodec() {}

  static JsonNode body(JobEntry entry) {
    return entry instanceof Act act ? ActForm.body(act) : MAPPER.valueToTree(entry);
  }

  /**
   * The entry with this name and body.
   *
   * @throws UnknownTypeException when a newer version of the program wrote it
   * @throws IOException when the body is not that of such an entry
   */
  static JobEntry entry(String type, JsonNode body) throws IOException {
    Class<? extends JobEntry> found =
        EntryTypes.find(type).orElseThrow(() -> new UnknownTypeException(type));
    if (found == Act.class) {
      return ActForm.read(body);
    }
    try {
      return MAPPER.treeToValue(LaterFields.complete(type, body), found);
    } catch (JsonProcessingException e) {
      throw new IOException(
          "the entry \"" + type + "\" is not understood: " + e.getOriginalMessage(), e);
    }
  }

  /** An entry of a kind that this version does not know. */
  static final class UnknownTypeException extends IOException {
    UnknownTypeException(String type) {
      super("it speaks of \"" + type + "\", which this version does not know");
    }
  }
}
