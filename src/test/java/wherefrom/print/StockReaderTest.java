package wherefrom.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StockReaderTest {
  private static final String GOOD =
      """
      {"name": "mine", "title": "My sheet", "medium": "sheet", "unit": "mm",
       "page": {"width": 210, "height": 297}, "label": {"width": 70, "height": 37},
       "columns": 3, "rows": 8, "left": 0, "top": 0.5, "gapAcross": 0, "gapDown": 0, "dpi": 300}
      """;

  private static List<StockFault> faults(String json) {
    StockReading reading = StockReader.read(json);
    return reading instanceof StockReading.Bad bad ? bad.faults() : List.of();
  }

  @Test
  void aRightStockIsRead() {
    assertThat(StockReader.read(GOOD)).isInstanceOf(StockReading.Good.class);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"name\": \"mine\"|\"name\": \"My Sheet\"|name",
        "\"name\": \"mine\"|\"name\": 7|name",
        "\"title\": \"My sheet\",||title",
        "\"medium\": \"sheet\"|\"medium\": \"paper\"|medium",
        "\"unit\": \"mm\"|\"unit\": \"feet\"|unit",
        "\"width\": 210|\"width\": 9|page.width",
        "\"height\": 297|\"height\": 2970|page.height",
        "\"width\": 210|\"width\": 205|label.width",
        "\"height\": 297|\"height\": 290|label.height",
        "\"width\": 70|\"width\": \"70\"|label.width",
        "\"width\": 70|\"width\": 70, \"depth\": 1|label.depth",
        "\"label\": {\"width\": 70, \"height\": 37}|\"label\": {\"width\": 20, \"height\": 12}|label.width",
        "\"columns\": 3|\"columns\": 0|columns",
        "\"rows\": 8|\"rows\": 2.5|rows",
        "\"left\": 0|\"left\": -1|left",
        "\"top\": 0.5|\"top\": -0.5|top",
        "\"gapAcross\": 0|\"gapAcross\": -0.1|gapAcross",
        "\"gapDown\": 0|\"gapDown\": -2|gapDown",
        "\"gapDown\": 0|\"gapDown\": 1e99|gapDown",
        "\"dpi\": 300|\"dpi\": 100|dpi",
        "\"dpi\": 300|\"dpi\": 300, \"gloss\": true|gloss",
        "\"dpi\": 300|\"dpi\": 300, \"cutMarks\": 1|cutMarks",
        "\"dpi\": 300|\"dpi\": 300, \"punch\": 10|punch",
        "\"dpi\": 300|\"dpi\": 300, \"punch\": {\"keepOut\": 40}|punch.keepOut",
        "\"medium\": \"sheet\"|\"medium\": \"roll\"|columns",
      })
  void aWrongStockIsRefusedWithASentenceThatNamesTheField(String was, String is, String field) {
    String json = GOOD.replace(was, is == null ? "" : is);
    assertThat(json).isNotEqualTo(GOOD);
    assertThat(faults(json))
        .anySatisfy(
            fault -> {
              assertThat(fault.field()).isEqualTo(field);
              assertThat(fault.sentence()).contains(field).endsWith(".");
            });
  }

  @Test
  void everyWrongFieldIsNamedAtOnce() {
    String json = GOOD.replace("\"rows\": 8", "\"rows\": 0").replace("\"mm\"", "\"ft\"");
    assertThat(faults(json)).extracting(StockFault::field).contains("rows", "unit");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"''", "[]", "{", "{\"name\": \"a\", \"name\": \"b\"}", "{} {}", "null"})
  void whatIsNoStockAtAllIsRefusedWithoutAnException(String json) {
    assertThat(faults(json)).isNotEmpty().allSatisfy(f -> assertThat(f.sentence()).endsWith("."));
  }

  @Test
  void inchesAreExact() {
    String json =
        GOOD.replace("\"unit\": \"mm\"", "\"unit\": \"in\"")
            .replace("\"width\": 210, \"height\": 297", "\"width\": 8.5, \"height\": 11")
            .replace("\"width\": 70, \"height\": 37", "\"width\": 2.625, \"height\": 1.25");
    assertThat(StockReader.read(json))
        .isInstanceOfSatisfying(
            StockReading.Good.class,
            good -> {
              assertThat(good.stock().page().width().nanometres()).isEqualTo(215_900_000);
              assertThat(good.stock().label().width().nanometres()).isEqualTo(66_675_000);
            });
  }
}
