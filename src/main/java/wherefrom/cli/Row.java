package wherefrom.cli;

import java.util.List;
import java.util.Map;

/**
 * A row of an answer, as text and as JSON. It is a record: its components are the fields of its
 * JSON object, in their order ({@link Json}).
 */
interface Row {
  /**
   * Its line, or its lines: what is only told; where it has no such component, the values of all of
   * them with tabs between.
   */
  default String text() {
    return Json.told((Record) this);
  }

  /** One under the other. */
  static String lines(String... lines) {
    return lines(List.of(lines));
  }

  static String lines(List<String> lines) {
    return String.join(System.lineSeparator(), lines);
  }

  /** What its JSON object holds. */
  default Map<String, Object> fields() {
    return Json.fields((Record) this);
  }

  /** A row of which there is one kind of answer only. */
  record Told(String text, Map<String, Object> fields) implements Row {}

  /** What only the text of a row has; its JSON object lacks it. */
  record Beside(String text) implements Row {
    @Override
    public Map<String, Object> fields() {
      return Map.of();
    }
  }

  /** A row that is one sentence. */
  record Said(String sentence) implements Row {
    @Override
    public String text() {
      return sentence;
    }
  }
}
