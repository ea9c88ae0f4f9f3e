package wherefrom.settings;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import wherefrom.job.settings.Settings;

/**
 * The fields of a settings file, each checked alone: a wrong one is noted and the fresh one taken.
 */
final class SettingFields {
  /** Nothing that is set is longer, in letters; a path may be. */
  private static final int MOST_LETTERS = 200;

  private static final int MOST_PATH_LETTERS = 4_000;

  private final JsonNode json;
  private final List<String> wrong = new ArrayList<>();

  SettingFields(JsonNode json) {
    this.json = json;
  }

  /** The names of the fields that are wrong, in the order in which they were asked for. */
  List<String> wrong() {
    return List.copyOf(wrong);
  }

  boolean flag(String field, boolean fresh) {
    return take(field, fresh, JsonNode::isBoolean, value -> Optional.of(value.booleanValue()));
  }

  int whole(String field, int fresh, Predicate<Integer> good) {
    return take(field, fresh, JsonNode::isInt, value -> Optional.of(value.intValue()).filter(good));
  }

  double number(String field, double fresh, Predicate<Double> good) {
    return take(
        field, fresh, JsonNode::isNumber, value -> Optional.of(value.doubleValue()).filter(good));
  }

  String text(String field, String fresh, Predicate<String> good) {
    return choice(field, fresh, value -> Optional.of(value).filter(good));
  }

  /** A text that stands for something; it is wrong where it stands for nothing. */
  <T> T choice(String field, T fresh, Function<String, Optional<T>> meaning) {
    return take(field, fresh, SettingFields::isShort, value -> meaning.apply(value.textValue()));
  }

  Optional<Path> path(String field) {
    return take(field, Optional.empty(), JsonNode::isTextual, this::path);
  }

  private Optional<Optional<Path>> path(JsonNode value) {
    String text = value.textValue();
    if (text.isEmpty()) {
      return Optional.of(Optional.empty());
    }
    try {
      return text.length() > MOST_PATH_LETTERS
          ? Optional.empty()
          : Optional.of(Optional.of(Path.of(text)));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  /**
   * Copies by the name of what was copied, each checked alone.
   *
   * @param times the field that says when each was made
   * @param reaches the field that says how far each goes; of an older version it is missing
   */
  Map<String, Settings.Copy> copies(String times, String reaches) {
    JsonNode upTo = object(reaches);
    Map<String, Settings.Copy> copies = new HashMap<>();
    for (Map.Entry<String, JsonNode> each : object(times).properties()) {
      try {
        Instant time = Instant.parse(each.getValue().asText(""));
        long reach = reach(reaches, upTo.path(each.getKey()));
        copies.put(each.getKey(), new Settings.Copy(time, reach));
      } catch (DateTimeParseException e) {
        note(times);
      }
    }
    return copies;
  }

  private JsonNode object(String field) {
    return take(field, JsonNodeFactory.instance.objectNode(), JsonNode::isObject, Optional::of);
  }

  /** How far a copy goes; 0, which is not known, where that is missing or wrong. */
  private long reach(String field, JsonNode value) {
    boolean counted = value.isIntegralNumber() && value.canConvertToLong() && value.asLong() >= 0;
    if (!counted && !value.isMissingNode()) {
      note(field);
    }
    return counted ? value.asLong() : 0;
  }

  private void note(String field) {
    if (!wrong.contains(field)) {
      wrong.add(field);
    }
  }

  private <T> T take(
      String field, T fresh, Predicate<JsonNode> type, Function<JsonNode, Optional<T>> meaning) {
    JsonNode value = json.path(field);
    if (value.isMissingNode()) {
      return fresh;
    }
    Optional<T> found = type.test(value) ? meaning.apply(value) : Optional.empty();
    if (found.isEmpty()) {
      note(field);
    }
    return found.orElse(fresh);
  }

  private static boolean isShort(JsonNode value) {
    return value.isTextual() && value.textValue().length() <= MOST_LETTERS;
  }
}
