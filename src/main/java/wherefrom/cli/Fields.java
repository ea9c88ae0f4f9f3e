package wherefrom.cli;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** The fields of a JSON object, in order; an object, a list, a text, a number or true or false. */
final class Fields {
  private final Map<String, Object> fields = new LinkedHashMap<>();

  static Fields of(String name, Object value) {
    return new Fields().and(name, value);
  }

  Fields and(String name, Object value) {
    fields.put(name, value instanceof Fields inner ? inner.all() : value);
    return this;
  }

  Map<String, Object> all() {
    return Collections.unmodifiableMap(fields);
  }
}
