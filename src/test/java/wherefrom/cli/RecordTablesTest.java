package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.files.Csv;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;
import wherefrom.job.tables.JobTables;

/** {@code record --tables}: files, and the same as JSON. */
class RecordTablesTest {
  @TempDir Path folder;

  private Shop shop;

  @BeforeEach
  void begin() {
    shop = new Shop(folder);
    shop.run("demo", "--folder", folder.resolve("demo").toString());
  }

  @Test
  void eachTableIsAFileAndAsJsonHasTheSameRows() throws IOException {
    Shop.Outcome said =
        shop.run(
            "record",
            "--job",
            folder.resolve("demo").toString(),
            "--tables",
            folder.resolve("tables").toString(),
            "--json");
    assertThat(said.status()).isZero();
    JsonNode tables =
        new ObjectMapper()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .readTree(said.out())
            .get("tables");
    List<String> names = new ArrayList<>();
    tables.fieldNames().forEachRemaining(names::add);
    assertThat(names).isEqualTo(JobTables.NAMES);
    shop.change(
        folder.resolve("demo").toString(),
        job -> JobTables.of(job).forEach(table -> isWhole(table, tables.get(table.name()))));
    assertThat(tables.get("readings").get(0).get("value").isNumber()).isTrue();
  }

  /** Every cell, in the file and as JSON, where what is not known is left out. */
  private void isWhole(TidyTable table, JsonNode json) {
    List<List<String>> file = read(table.name());
    assertThat(file.get(0)).isEqualTo(table.columns());
    assertThat(file).as(table.name()).hasSize(table.rows().size() + 1);
    assertThat(json).as(table.name()).hasSize(table.rows().size());
    for (int row = 0; row < table.rows().size(); row++) {
      for (int at = 0; at < table.columns().size(); at++) {
        TidyCell cell = table.rows().get(row).get(at);
        assertThat(file.get(row + 1).get(at)).isEqualTo(cell.text());
        JsonNode value = json.get(row).path(table.columns().get(at));
        assertThat(value.isMissingNode()).isEqualTo(cell.text().isEmpty());
        assertThat(value.isNumber()).isEqualTo(cell.isNumber() && !cell.text().isEmpty());
        assertThat(value.isNumber() ? value.decimalValue().toPlainString() : value.asText())
            .satisfies(said -> isSame(said, cell));
      }
    }
  }

  private static void isSame(String said, TidyCell cell) {
    if (cell.isNumber()) {
      assertThat(new BigDecimal(said)).isEqualByComparingTo(cell.text());
    } else {
      assertThat(said).isEqualTo(cell.text());
    }
  }

  private List<List<String>> read(String table) {
    try {
      Path file = folder.resolve("tables").resolve(table + ".csv");
      return Csv.read(Files.readString(file).substring(1));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void aTableThatIsThereStaysUnlessItMayGo() throws IOException {
    Path kept = Files.createDirectories(folder.resolve("tables")).resolve("costs.csv");
    Files.writeString(kept, "mine");
    String[] call = {
      "record",
      "--job",
      folder.resolve("demo").toString(),
      "--tables",
      folder.resolve("tables").toString()
    };
    Shop.Outcome refused = shop.run(call);
    assertThat(refused.status()).isNotZero();
    assertThat(refused.err()).contains("costs.csv is there already", "--replace");
    assertThat(kept).hasContent("mine");
    assertThat(folder.resolve("tables").resolve("parts.csv")).doesNotExist();
    List<String> again = new ArrayList<>(List.of(call));
    again.add("--replace");
    assertThat(shop.run(again.toArray(String[]::new)).status()).isZero();
    assertThat(Files.readString(kept)).contains("currency");
  }

  @Test
  void asJsonAloneNothingIsWritten() throws IOException {
    Shop.Outcome said =
        shop.run("record", "--job", folder.resolve("demo").toString(), "--tables", "-", "--json");
    assertThat(new ObjectMapper().readTree(said.out()).get("tables").get("parts")).isNotEmpty();
    assertThat(folder).isDirectoryNotContaining(path -> path.endsWith("tables"));
  }

  @Test
  void aFileInThePlaceOfTheFolderIsSaid() throws IOException {
    Files.writeString(folder.resolve("tables"), "a file");
    Shop.Outcome said =
        shop.run(
            "record",
            "--job",
            folder.resolve("demo").toString(),
            "--tables",
            folder.resolve("tables").toString());
    assertThat(said.err()).contains("is not a folder");
  }
}
