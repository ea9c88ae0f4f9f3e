package wherefrom.job.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Look;
import wherefrom.inspection.measure.Judgement;
import wherefrom.inspection.measure.Sample;
import wherefrom.job.BenchJob;
import wherefrom.job.LoggedEntry;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.money.CostLine;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.numbers.PlotSample;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;
import wherefrom.job.shop.MachineShop;
import wherefrom.job.shop.ShopVisit;
import wherefrom.job.torque.CardTyped;
import wherefrom.job.torque.TorqueBook;
import wherefrom.logbook.LogbookFile;
import wherefrom.workings.ResultValue;
import wherefrom.workings.torque.BoltPattern;

/** What the tables say is what the job says. */
class JobTablesTest {
  private static final OpenJob DEMO =
      new OpenJob(LogbookFile.read(Path.of("demo-data")), Clock.systemUTC());

  private static List<Map<String, String>> rows(OpenJob job, String name) {
    TidyTable table =
        JobTables.of(job).stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
    List<Map<String, String>> rows = new ArrayList<>();
    for (List<TidyCell> row : table.rows()) {
      Map<String, String> named = new LinkedHashMap<>();
      for (int at = 0; at < row.size(); at++) {
        named.put(table.columns().get(at), row.get(at).text());
      }
      rows.add(named);
    }
    return rows;
  }

  private static Instant time(String utc) {
    return Instant.parse(utc.replace(' ', 'T') + "Z");
  }

  @Test
  void theTablesHaveTheirNamesInTheirOrder() {
    assertThat(JobTables.of(DEMO)).extracting(TidyTable::name).isEqualTo(JobTables.NAMES);
  }

  @Test
  void everyPartComesBackFromItsRow() {
    List<Map<String, String>> rows = rows(DEMO, "parts");
    assertThat(rows).hasSameSizeAs(DEMO.state().parts());
    for (Map<String, String> row : rows) {
      PartRecord part = DEMO.state().getPart(Integer.parseInt(row.get("item")));
      assertThat(row.get("tag")).isEqualTo(part.part().code(DEMO.state().engine()).typed());
      assertThat(row.get("kind") + "@" + row.get("home")).isEqualTo(part.part().home().key());
      assertThat(row.get("is")).isEqualTo(part.where().words());
      assertThat(row.get("decision")).isEqualTo(part.decision().map(d -> d.word()).orElse(""));
      assertThat(row.get("fitted_at"))
          .isEqualTo(
              DEMO.state().findFittedAt(part.part().item()).map(at -> at.spot().key()).orElse(""));
      assertThat(row.get("fitted_utc").isEmpty()).isEqualTo(row.get("fitted_at").isEmpty());
    }
  }

  @Test
  void everyResultComesBackWithItsUncertaintyItsLimitAndItsVerdict() {
    List<Map<String, String>> rows = rows(DEMO, "readings");
    int at = 0;
    for (MeasuredResult result : DEMO.state().measures().all()) {
      for (ResultValue value : result.values()) {
        Map<String, String> row = rows.get(at++);
        assertThat(row.get("plan")).isEqualTo(result.plan().key());
        assertThat(row.get("result")).isEqualTo(value.key());
        assertThat(row.get("unit")).isEqualTo(value.unit().symbol());
        assertThat(row.get("tool")).isEqualTo(result.tool().name());
        assertThat(time(row.get("utc"))).isEqualTo(result.time());
        near(row.get("value"), value.value());
        near(row.get("standard_uncertainty"), value.standardUncertainty());
        Judgement judged =
            result.judgements().stream()
                .filter(one -> one.value().equals(value))
                .findFirst()
                .orElse(null);
        assertThat(row.get("verdict"))
            .isEqualTo(
                judged == null ? "" : judged.decision().name().toLowerCase(java.util.Locale.ROOT));
        assertThat(row.get("limit_source"))
            .isEqualTo(judged == null ? "" : judged.limit().source());
        if (judged != null && judged.limit().upper().isPresent()) {
          near(row.get("limit_most"), judged.limit().upper().get().in(value.unit()));
        }
        if (judged != null && judged.limit().lower().isPresent()) {
          near(row.get("limit_least"), judged.limit().lower().get().in(value.unit()));
        }
      }
    }
    assertThat(rows.subList(at, rows.size()))
        .isNotEmpty()
        .allMatch(row -> row.get("plan").equals("oil-clearance"));
  }

  private static void near(String cell, double value) {
    assertThat(new BigDecimal(cell).doubleValue())
        .isCloseTo(value, within(Math.max(1e-15, Math.abs(value) * 1e-11)));
  }

  @Test
  void everyReadingComesBackAsItWasTyped() {
    List<Map<String, String>> rows = rows(DEMO, "samples");
    int at = 0;
    for (MeasuredResult result : DEMO.state().measures().all()) {
      for (Sample sample : result.samples()) {
        for (var reading : sample.readings()) {
          Map<String, String> row = rows.get(at++);
          assertThat(row.get("reading") + " " + row.get("unit")).isEqualTo(reading.text());
          assertThat(row.get("station")).isEqualTo(sample.station().key());
        }
      }
    }
    assertThat(rows).hasSize(at);
  }

  @Test
  void everyAnswerAndEveryDecisionThatStandsIsARow() {
    List<String> answers = new ArrayList<>();
    List<LoggedEntry> standing = DEMO.state().standing();
    for (LoggedEntry logged : standing) {
      if (logged.entry() instanceof LookRecorded look) {
        answers.add(logged.sequence() + " " + look.look().word() + " " + look.note());
      } else if (logged.entry() instanceof FeatureLooked look) {
        answers.add(logged.sequence() + " " + look.look().word() + " " + look.note());
      }
    }
    assertThat(rows(DEMO, "findings"))
        .extracting(row -> row.get("sequence") + " " + row.get("answer") + " " + row.get("note"))
        .isEqualTo(answers);
    Map<String, String> last = new LinkedHashMap<>();
    rows(DEMO, "decisions").forEach(row -> last.put(row.get("item"), row.get("decision")));
    DEMO.state().parts().stream()
        .filter(part -> part.decision().isPresent())
        .forEach(
            part ->
                assertThat(last.get("" + part.part().item()))
                    .isEqualTo(part.decision().get().word()));
    assertThat(rows(DEMO, "events")).hasSameSizeAs(standing);
  }

  @Test
  void theCostsSumToTheMoneyOfTheJob() {
    MoneyBook book = new MoneyBook(DEMO);
    List<Map<String, String>> rows = rows(DEMO, "costs");
    long cents =
        rows.stream()
            .filter(row -> !row.get("number").isEmpty())
            .mapToLong(row -> new BigDecimal(row.get("amount")).movePointRight(2).longValueExact())
            .sum();
    assertThat(cents).isEqualTo(book.lines().stream().mapToLong(l -> l.amount().cents()).sum());
    assertThat(rows.stream().filter(row -> row.get("state").equals("to buy")).count())
        .isEqualTo(book.toBuy().size());
    assertThat(rows).extracting(row -> row.get("what")).contains(first(book.lines()));
  }

  private static String first(List<CostLine> lines) {
    return lines.get(0).what().words();
  }

  @Test
  void theShopsPiecesAreThoseOfTheSlips() {
    List<Map<String, String>> rows = rows(DEMO, "shop");
    List<ShopVisit> visits = new MachineShop(DEMO).visits();
    int sent = visits.stream().mapToInt(ShopVisit::pieces).sum();
    int missing = visits.stream().mapToInt(ShopVisit::missing).sum();
    assertThat(sum(rows, "pieces")).isEqualTo(sent);
    assertThat(sum(rows, "pieces") - sum(rows, "back")).isEqualTo(missing);
  }

  private static int sum(List<Map<String, String>> rows, String column) {
    return rows.stream().mapToInt(row -> Integer.parseInt(row.get(column))).sum();
  }

  @Test
  void everyBoltThatWasTightenedIsARow() {
    BenchJob bench = BenchJob.v8();
    TorqueBook book = new TorqueBook(bench.job);
    book.begin(
        new CardTyped(
            "main caps",
            1,
            3,
            BoltPattern.ofRectangle(1, 3).positions(),
            "",
            "oiled",
            List.of("20 N·m", "40 N·m"),
            "manual, p. 3"));
    book.tick(1, 1, "A. B.", false);
    book.tick(1, 3, "A. B.", true);
    assertThat(rows(bench.job, "torque"))
        .extracting(row -> List.of(row.get("bolt"), row.get("person"), row.get("out_of_turn")))
        .containsExactly(List.of("1", "A. B.", "no"), List.of("3", "A. B.", "yes"));
  }

  @Test
  void aNumberIsANumberInEveryRowOfItsColumn() {
    for (OpenJob job : List.of(DEMO, PlotSample.measured(), BenchJob.v8().job)) {
      for (TidyTable table : JobTables.of(job)) {
        for (int at = 0; at < table.columns().size(); at++) {
          int column = at;
          assertThat(
                  table.rows().stream()
                      .map(row -> row.get(column))
                      .filter(cell -> !cell.text().isEmpty())
                      .map(TidyCell::isNumber)
                      .distinct())
              .as(table.name() + "." + table.columns().get(at))
              .hasSizeLessThan(2);
        }
      }
    }
  }

  @Test
  void aSuspectPartIsSaidInItsRow() {
    BenchJob bench = BenchJob.v8();
    bench.look("pushrod@3EX", "pushrod-roll", Look.SUSPECT);
    String item = "" + bench.item("pushrod@3EX");
    assertThat(rows(bench.job, "parts"))
        .filteredOn(row -> row.get("item").equals(item))
        .extracting(row -> row.get("worst_answer"))
        .containsExactly("suspect");
  }
}
