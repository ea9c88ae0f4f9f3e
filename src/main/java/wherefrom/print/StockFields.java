package wherefrom.print;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import wherefrom.quantity.Length;

/**
 * The fields of one JSON object of a stock file. What is wrong is added to the faults, and a
 * harmless value handed back, so that one reading names every fault.
 */
final class StockFields {
  private static final int MOST_DIGITS = 30;
  private static final int MOST_SHOWN = 40;

  private final JsonNode node;
  private final String prefix;
  private final List<StockFault> faults;
  private final Set<String> known = new HashSet<>();

  StockFields(JsonNode node, String prefix, List<StockFault> faults) {
    this.node = node;
    this.prefix = prefix;
    this.faults = faults;
  }

  String text(String field) {
    Optional<JsonNode> value = take(field, "give it as text in quotes");
    if (value.isPresent() && (!value.get().isTextual() || value.get().asText().isBlank())) {
      fault(field, "must be text in quotes, not " + shown(value.get()));
    }
    return value.map(JsonNode::asText).orElse("");
  }

  int whole(String field, int least, int most) {
    String wanted = String.format(Locale.ROOT, "a whole number from %d to %d", least, most);
    Optional<JsonNode> value = take(field, "give it as " + wanted);
    if (value.isEmpty()) {
      return least;
    }
    JsonNode number = value.get();
    if (!number.isInt() || number.asInt() < least || number.asInt() > most) {
      fault(field, "must be " + wanted + ", not " + shown(number));
      return least;
    }
    return number.asInt();
  }

  Length length(String field, StockUnit unit) {
    Optional<JsonNode> value = take(field, "give it as a number in " + unit.word());
    if (value.isEmpty()) {
      return Length.ZERO;
    }
    if (!value.get().isNumber() || !isShort(value.get().decimalValue())) {
      fault(field, "must be a number in " + unit.word() + ", not " + shown(value.get()));
      return Length.ZERO;
    }
    return unit.length(value.get().decimalValue());
  }

  /** Within bounds and written in few digits: 1e-999999999 would fill the memory. */
  private static boolean isShort(BigDecimal number) {
    return Math.abs(number.doubleValue()) <= StockUnit.MOST
        && number.precision() <= MOST_DIGITS
        && Math.abs((long) number.scale()) <= MOST_DIGITS;
  }

  private static String shown(JsonNode value) {
    String text = value.toString();
    return text.length() > MOST_SHOWN ? text.substring(0, MOST_SHOWN) + "…" : text;
  }

  boolean flag(String field) {
    if (!node.has(field)) {
      return false;
    }
    Optional<JsonNode> value = take(field, "");
    if (value.isPresent() && !value.get().isBoolean()) {
      fault(field, "must be true or false, not " + shown(value.get()));
    }
    return value.map(JsonNode::asBoolean).orElse(false);
  }

  boolean has(String field) {
    return node.has(field);
  }

  StockFields object(String field) {
    Optional<JsonNode> value = take(field, "give it in braces");
    if (value.isPresent() && !value.get().isObject()) {
      fault(field, "must be an object in braces, not " + shown(value.get()));
    }
    return new StockFields(value.orElse(node.path(field)), prefix + field + ".", faults);
  }

  /** Names every field that nothing asked for. */
  void refuseOthers() {
    for (String field : (Iterable<String>) node::fieldNames) {
      if (!known.contains(field)) {
        fault(field, "is not a field of a label stock: remove it or correct its spelling");
      }
    }
  }

  void fault(String field, String rest) {
    String name = prefix + (field.length() > MOST_SHOWN ? field.substring(0, MOST_SHOWN) : field);
    faults.add(new StockFault(name, name + " " + rest + "."));
  }

  private Optional<JsonNode> take(String field, String remedy) {
    known.add(field);
    if (!node.has(field)) {
      fault(field, "is missing: " + remedy);
      return Optional.empty();
    }
    return Optional.of(node.get(field));
  }
}
