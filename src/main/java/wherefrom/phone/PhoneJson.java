package wherefrom.phone;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.job.phone.PhoneKey;
import wherefrom.job.phone.PhoneView;
import wherefrom.job.phone.PhoneWork;
import wherefrom.rules.Fact;

/** The few forms in which phone and program talk: flat objects of words in, what is shown out. */
final class PhoneJson {
  private static final JsonFactory FACTORY = new JsonFactory();
  private static final int MOST_FIELDS = 8;

  private PhoneJson() {}

  /** Writes something. */
  @FunctionalInterface
  private interface Writing {
    void to(JsonGenerator json) throws IOException;
  }

  private static String written(Writing writing) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(text)) {
      json.writeStartObject();
      writing.to(json);
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  static String object(Map<String, String> fields) {
    return written(
        json -> {
          for (Map.Entry<String, String> field : fields.entrySet()) {
            json.writeStringField(field.getKey(), field.getValue());
          }
        });
  }

  /**
   * An object whose fields are all words.
   *
   * @throws Refused where it is anything else
   */
  static Map<String, String> read(byte[] body) throws Refused {
    try (JsonParser json = FACTORY.createParser(body)) {
      Map<String, String> fields = new HashMap<>();
      boolean flat = json.nextToken() == JsonToken.START_OBJECT;
      while (flat && json.nextToken() == JsonToken.FIELD_NAME && fields.size() < MOST_FIELDS) {
        String name = json.currentName();
        flat = json.nextToken() == JsonToken.VALUE_STRING;
        fields.put(name, flat ? json.getText() : "");
      }
      if (!flat || json.currentToken() != JsonToken.END_OBJECT || json.nextToken() != null) {
        throw new Refused(400, "That is not understood here.");
      }
      return fields;
    } catch (IOException e) {
      throw new Refused(400, "That is not understood here.");
    }
  }

  /**
   * What stands on a phone.
   *
   * @param subject the key of what a photograph would show; empty where nothing was scanned
   */
  static String of(
      PhoneView view, PhoneWork work, String job, Optional<String> subject, String subjectWords) {
    return written(
        json -> {
          json.writeStringField("job", job);
          json.writeStringField("work", work.key());
          json.writeStringField("cue", view.cue().map(cue -> cue.name()).orElse(""));
          json.writeStringField("headline", view.headline());
          json.writeStringField("place", view.place());
          json.writeStringField("what", view.what());
          json.writeStringField("small", view.small());
          json.writeStringField("next", view.next());
          json.writeStringField("subject", subject.orElse(""));
          json.writeStringField("subjectWords", subjectWords);
          facts(json, view.facts());
          keys(json, "tag", view.tag().map(List::of).orElseGet(List::of));
          keys(json, "keys", view.keys());
          keys(json, "choices", view.choices());
        });
  }

  private static void facts(JsonGenerator json, List<Fact> facts) throws IOException {
    json.writeArrayFieldStart("facts");
    for (Fact fact : facts) {
      json.writeStartObject();
      json.writeStringField("label", fact.label());
      json.writeStringField("value", fact.value());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void keys(JsonGenerator json, String name, List<PhoneKey> keys)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (PhoneKey key : keys) {
      json.writeStartObject();
      json.writeStringField("deed", key.deed().key());
      json.writeStringField("with", key.with());
      json.writeStringField("words", key.words());
      json.writeStringField("more", key.more());
      json.writeBooleanField("held", key.deed().isHeld());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
