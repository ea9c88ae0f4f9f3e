package wherefrom.cli;

import java.util.Map;

/**
 * A row of an answer, as text and as JSON. It is a record: its components are the fields of its JSON
 * object, in their order ({@link Json}).
 */
interface Row {
  /** Its line, or its lines; cells have tabs between them. */
  String text();

  /** What its JSON object holds. */
  default Map<String, Object> fields() {
    return Json.fields((Record) this);
  }

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
