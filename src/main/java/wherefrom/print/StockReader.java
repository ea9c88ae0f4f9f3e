package wherefrom.print;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.quantity.Length;

/** Reads a label stock from JSON and refuses a wrong one, naming every wrong field. */
final class StockReader {
  private static final int MOST_LABELS = 100;

  private static final ObjectMapper JSON =
      new ObjectMapper()
          .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

  private StockReader() {}

  static StockReading read(String json) {
    try {
      return read(JSON.readTree(json));
    } catch (JsonProcessingException e) {
      int line = e.getLocation() == null ? 1 : e.getLocation().getLineNr();
      String sentence = "Line " + line + " is not valid JSON: " + e.getOriginalMessage() + ".";
      return new StockReading.Bad(List.of(new StockFault("", sentence)));
    } catch (IllegalArgumentException e) {
      String sentence = "A number in it has far too many digits. Write it as on a ruler.";
      return new StockReading.Bad(List.of(new StockFault("", sentence)));
    }
  }

  private static StockReading read(JsonNode root) {
    if (!root.isObject()) {
      String sentence = "A label stock is one JSON object in braces; this file holds none.";
      return new StockReading.Bad(List.of(new StockFault("", sentence)));
    }
    List<StockFault> faults = new ArrayList<>();
    LabelStock stock = stock(new StockFields(root, "", faults));
    if (faults.isEmpty()) {
      faults.addAll(StockCheck.faults(stock));
    }
    return faults.isEmpty() ? new StockReading.Good(stock) : new StockReading.Bad(faults);
  }

  private static LabelStock stock(StockFields fields) {
    StockUnit unit = unit(fields);
    LabelStock stock =
        new LabelStock(
            fields.text("name"),
            fields.text("title"),
            medium(fields),
            size(fields, "page", unit),
            size(fields, "label", unit),
            fields.whole("columns", 1, MOST_LABELS),
            fields.whole("rows", 1, MOST_LABELS),
            fields.length("left", unit),
            fields.length("top", unit),
            fields.length("gapAcross", unit),
            fields.length("gapDown", unit),
            fields.whole("dpi", 1, 10_000),
            keepOut(fields, unit),
            fields.flag("cutMarks"));
    fields.refuseOthers();
    return stock;
  }

  private static StockUnit unit(StockFields fields) {
    String word = fields.text("unit");
    Optional<StockUnit> unit = StockUnit.find(word);
    if (unit.isEmpty() && !word.isEmpty()) {
      fields.fault("unit", "must be \"mm\" or \"in\", not \"" + word + "\"");
    }
    return unit.orElse(StockUnit.MM);
  }

  private static Medium medium(StockFields fields) {
    String word = fields.text("medium");
    Optional<Medium> medium = Medium.find(word);
    if (medium.isEmpty() && !word.isEmpty()) {
      fields.fault(
          "medium", "must be \"sheet\", \"card\", \"tag\" or \"roll\", not \"" + word + "\"");
    }
    return medium.orElse(Medium.SHEET);
  }

  private static Size size(StockFields fields, String field, StockUnit unit) {
    StockFields inner = fields.object(field);
    Size size = new Size(inner.length("width", unit), inner.length("height", unit));
    inner.refuseOthers();
    return size;
  }

  private static Length keepOut(StockFields fields, StockUnit unit) {
    if (!fields.has("punch")) {
      return Length.ZERO;
    }
    StockFields punch = fields.object("punch");
    Length keepOut = punch.length("keepOut", unit);
    punch.refuseOthers();
    return keepOut;
  }
}
