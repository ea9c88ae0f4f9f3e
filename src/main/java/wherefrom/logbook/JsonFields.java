package wherefrom.logbook;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * The fields of a JSON object that a person may have typed: each is asked for by name and type, and
 * what is missing, of the wrong type or left over is said in a sentence that names it.
 */
final class JsonFields {
  /** For what a person may have typed: a field that stands twice may say two things. */
  static final ObjectMapper MAPPER =
      EntryCodec.MAPPER.copy().enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION);

  private final String path;
  private final JsonNode object;
  private final Set<String> asked = new HashSet<>();

  /**
   * @param path what stands before the names of the fields; empty at the top
   */
  JsonFields(String path, JsonNode object) throws IOException {
    if (!object.isObject()) {
      String what = path.isEmpty() ? "the file" : path;
      throw new IOException(what + ": this must be an object in braces { }.");
    }
    this.path = path;
    this.object = object;
  }

  /** Whether reading stopped because a field stands twice. */
  static boolean isTwice(JsonProcessingException e) {
    return String.valueOf(e.getOriginalMessage()).startsWith("Duplicate field");
  }

  /** Whether the field stands there; older files leave out what came later. */
  boolean has(String field) {
    return object.has(field);
  }

  String text(String field) throws IOException {
    JsonNode node = get(field);
    if (!node.isTextual()) {
      throw wrong(field, "a text in quotes", node);
    }
    return node.asText();
  }

  int whole(String field) throws IOException {
    return wholeIn(field, get(field));
  }

  boolean yesOrNo(String field) throws IOException {
    JsonNode node = get(field);
    if (!node.isBoolean()) {
      throw wrong(field, "true or false", node);
    }
    return node.asBoolean();
  }

  /** One of a few words. */
  <T> T oneOf(String field, List<T> choices, Function<T, String> word) throws IOException {
    String found = text(field);
    for (T choice : choices) {
      if (word.apply(choice).equals(found)) {
        return choice;
      }
    }
    String words = String.join(", ", choices.stream().map(word).toList());
    throw new IOException(
        named(field) + ": \"" + found + "\" is not known. Use one of: " + words + ".");
  }

  List<Integer> wholeNumbers(String field) throws IOException {
    List<Integer> numbers = new ArrayList<>();
    for (JsonNode node : list(field)) {
      numbers.add(wholeIn(field, node));
    }
    return numbers;
  }

  List<JsonNode> list(String field) throws IOException {
    JsonNode node = get(field);
    if (!node.isArray()) {
      throw wrong(field, "a list in brackets [ ]", node);
    }
    List<JsonNode> list = new ArrayList<>();
    node.forEach(list::add);
    return list;
  }

  JsonNode object(String field) throws IOException {
    JsonNode node = get(field);
    if (!node.isObject()) {
      throw wrong(field, "an object in braces { }", node);
    }
    return node;
  }

  /** Says which field is left over that nobody asked for. */
  void nothingElse() throws IOException {
    for (Map.Entry<String, JsonNode> field : object.properties()) {
      if (!asked.contains(field.getKey())) {
        throw new IOException(
            named(field.getKey()) + ": this field is not known. Take it out or correct its name.");
      }
    }
  }

  private int wholeIn(String field, JsonNode node) throws IOException {
    if (!node.isIntegralNumber() || !node.canConvertToInt()) {
      throw wrong(field, "a whole number", node);
    }
    return node.asInt();
  }

  private JsonNode get(String field) throws IOException {
    asked.add(field);
    JsonNode node = object.path(field);
    if (node.isMissingNode() || node.isNull()) {
      throw new IOException(named(field) + ": this field is missing.");
    }
    return node;
  }

  private IOException wrong(String field, String wanted, JsonNode found) {
    return new IOException(
        named(field) + ": this must be " + wanted + ", not " + shortened(found) + ".");
  }

  private static String shortened(JsonNode found) {
    String text = found.toString();
    return text.length() > 40 ? text.substring(0, 40) + "…" : text;
  }

  private String named(String field) {
    return path.isEmpty() ? field : path + "." + field;
  }
}
