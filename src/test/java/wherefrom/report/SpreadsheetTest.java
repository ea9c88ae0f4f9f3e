package wherefrom.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.files.Csv;
import wherefrom.files.Outgoing;
import wherefrom.job.OpenJob;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;
import wherefrom.job.tables.JobTables;
import wherefrom.logbook.LogbookFile;

/** The tables as a spreadsheet program opens them; runs where one is installed. */
class SpreadsheetTest {
  private static final String PROGRAM = "ssconvert";

  @TempDir Path folder;

  @BeforeAll
  static void isInstalled() {
    boolean there =
        Stream.of(System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator))
            .anyMatch(path -> Files.isExecutable(Path.of(path, PROGRAM)));
    assumeTrue(there, "no " + PROGRAM + " here");
  }

  private static TidyTable table(String name) {
    try (OpenJob job = new OpenJob(LogbookFile.read(Path.of("demo-data")), Clock.systemUTC())) {
      return JobTables.of(job).stream()
          .filter(one -> one.name().equals(name))
          .findFirst()
          .orElseThrow();
    }
  }

  /** What the program makes of a table with a formula in a cell of its first row. */
  private List<List<String>> opened(TidyTable table, String formula)
      throws IOException, InterruptedException {
    Path csv = folder.resolve(table.name() + ".csv");
    Path out = folder.resolve("out.csv");
    new FileReports().writeTable(table, Outgoing.to(csv));
    Process process =
        new ProcessBuilder(
                PROGRAM, "--recalc", "--set", "Z1=" + formula, csv.toString(), out.toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("said.txt").toFile())
            .start();
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).as(Files.readString(folder.resolve("said.txt"))).isZero();
    return Csv.read(Files.readString(out));
  }

  private static double sum(TidyTable table, String column) {
    int at = table.columns().indexOf(column);
    return table.rows().stream()
        .map(row -> row.get(at))
        .filter(TidyCell::isNumber)
        .mapToDouble(cell -> new BigDecimal(cell.text()).doubleValue())
        .sum();
  }

  private void sums(String name, String column) throws IOException, InterruptedException {
    TidyTable table = table(name);
    char letter = (char) ('A' + table.columns().indexOf(column));
    int last = table.rows().size() + 1;
    List<List<String>> rows = opened(table, "=sum(" + letter + "2:" + letter + last + ")");
    double expected = sum(table, column);
    assertThat(expected).isPositive();
    assertThat(Double.parseDouble(rows.get(0).get(25)))
        .isCloseTo(expected, within(1e-9 * expected));
    assertThat(rows).hasSize(last);
    assertThat(rows.get(0).subList(0, table.columns().size())).isEqualTo(table.columns());
  }

  @Test
  void theProgramSumsWhatWasMeasured() throws IOException, InterruptedException {
    sums("readings", "value");
  }

  @Test
  void theProgramSumsTheMoney() throws IOException, InterruptedException {
    sums("costs", "amount");
  }

  @Test
  void tagsStayTextAndTimesAreTimes() throws IOException, InterruptedException {
    TidyTable table = table("parts");
    int tag = table.columns().indexOf("tag");
    int out = table.columns().indexOf("out_utc");
    char letter = (char) ('A' + out);
    List<List<String>> rows = opened(table, "=isnumber(" + letter + "2)");
    assertThat(rows.get(0).get(25)).isEqualTo("TRUE");
    assertThat(rows.get(1).get(tag)).isEqualTo(table.rows().get(0).get(tag).text());
  }

  @Test
  void lettersOfEveryCountryComeThrough() throws IOException, InterruptedException {
    TidyTable table =
        new TidyTable(
            "notes",
            List.of("note", "n"),
            List.of(
                List.of(TidyCell.of("Kolben groß, ±0.02 µm · Ж 日"), TidyCell.of(1)),
                List.of(TidyCell.of("=1+1"), TidyCell.of(2))));
    List<List<String>> rows = opened(table, "=b2+b3");
    assertThat(rows.get(0).get(0)).isEqualTo("note");
    assertThat(rows.get(0).get(25)).isEqualTo("3");
    assertThat(rows.get(1).get(0)).isEqualTo("Kolben groß, ±0.02 µm · Ж 日");
    assertThat(rows.get(2).get(0)).as("no formula").contains("=1+1");
  }
}
