package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.files.Csv;
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
    JsonNode tables = new ObjectMapper().readTree(said.out()).get("tables");
    List<String> names = new ArrayList<>();
    tables.fieldNames().forEachRemaining(names::add);
    assertThat(names).isEqualTo(JobTables.NAMES);
    for (String name : JobTables.NAMES) {
      List<List<String>> rows =
          Csv.read(Files.readString(folder.resolve("tables").resolve(name + ".csv")).substring(1));
      assertThat(tables.get(name)).as(name).hasSize(rows.size() - 1);
    }
    assertThat(tables.get("readings").get(0).get("value").isNumber()).isTrue();
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
