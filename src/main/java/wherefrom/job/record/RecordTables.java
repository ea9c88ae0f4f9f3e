package wherefrom.job.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Judgement;
import wherefrom.inspection.measure.Tool;
import wherefrom.job.BearingClearance;
import wherefrom.job.EngineJob;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OilClearances;
import wherefrom.job.OpenJob;
import wherefrom.job.PairClearance;
import wherefrom.job.PairClearances;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.inspect.DebrisBook;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;
import wherefrom.job.photos.Photograph;
import wherefrom.job.shop.MachineShop;
import wherefrom.job.shop.ShopVisit;
import wherefrom.rules.VerdictName;
import wherefrom.rules.debris.DebrisFind;
import wherefrom.rules.debris.ReachedMains;
import wherefrom.workings.ResultValue;

/** The smaller tables of the build record. */
public final class RecordTables {
  private RecordTables() {}

  static RecordSection onPurpose(EngineJob job) {
    List<RecordSection.Row> rows = new ArrayList<>();
    for (PartFitted fit : job.onPurpose()) {
      rows.add(
          row(
              true,
              job.getPart(fit.item()).part().words(),
              fit.place().words(),
              fit.against().map(VerdictName::word).orElse(""),
              fit.onPurpose()));
    }
    return new RecordSection(
        RecordTable.ON_PURPOSE,
        List.of("part", "into", "against", "reason"),
        rows,
        "Nothing was fitted in spite of a stop.");
  }

  public static RecordSection measurements(OpenJob open) {
    EngineJob job = open.state();
    List<RecordSection.Row> rows = new ArrayList<>();
    for (MeasuredResult result : job.measures().all()) {
      String judged =
          result.judgements().stream()
              .map(judgement -> judged(result, judgement))
              .collect(Collectors.joining(" "));
      String limits =
          result.judgements().stream()
              .map(judgement -> judgement.limit().source())
              .distinct()
              .collect(Collectors.joining(", "));
      rows.add(
          row(
              result.worst() == Look.SUSPECT || result.worst() == Look.FAIL,
              words(job, result.subject()) + ", " + result.plan().title(),
              result.values().stream()
                  .map(value -> named(result, value, " ") + value.text())
                  .collect(Collectors.joining(", ")),
              judged.isEmpty() ? unjudged(result) : judged,
              limits,
              result.tool().name() + ", zero " + result.zero().orElse("not checked"),
              open.days().day(result.time())));
    }
    new OilClearances(job).list().forEach(bearing -> clearance(bearing, rows));
    new PairClearances(job).measured().forEach(pair -> clearance(pair, rows));
    return new RecordSection(
        RecordTable.MEASURED,
        List.of(
            "what",
            "result ± standard uncertainty u",
            "judged with 1.65 u",
            "limit from",
            "tool",
            "when"),
        rows,
        "Nothing was measured.");
  }

  /** The judgement without the result, which stands beside it. */
  private static String judged(MeasuredResult result, Judgement judgement) {
    ResultValue value = judgement.value();
    return result.values().contains(value)
        ? named(result, value, ": ") + judgement.ruling()
        : judgement.sentence();
  }

  /** The result's name, but where its row names it already. */
  private static String named(MeasuredResult result, ResultValue value, String end) {
    return value.words().equalsIgnoreCase(result.plan().title()) ? "" : value.words() + end;
  }

  private static String unjudged(MeasuredResult result) {
    return result.isWhole()
        ? "no limit typed"
        : result.samples().size()
            + " of "
            + result.plan().stations().size()
            + " readings, not judged";
  }

  /** A clearance that is known, from the readings that stand in rows of their own. */
  private static void clearance(BearingClearance bearing, List<RecordSection.Row> rows) {
    if (bearing.range().isPresent()) {
      rows.add(
          row(
              bearing.look() == Look.SUSPECT || bearing.look() == Look.FAIL,
              bearing.words() + ", oil clearance",
              bearing.range().get().text(),
              bearing.judgement().map(Judgement::sentence).orElse("no limit typed"),
              bearing.judgement().map(judged -> judged.limit().source()).orElse(""),
              "worked out: " + bearing.said(),
              ""));
    }
  }

  /** The same of a pair. */
  private static void clearance(PairClearance pair, List<RecordSection.Row> rows) {
    if (pair.range().isPresent()) {
      rows.add(
          row(
              pair.look() == Look.SUSPECT || pair.look() == Look.FAIL,
              pair.words() + ", " + pair.pair().title().toLowerCase(Locale.ROOT) + " clearance",
              pair.range().get().text(),
              pair.judgement().map(Judgement::sentence).orElse(unjudged(pair)),
              pair.judgement().map(judged -> judged.limit().source()).orElse(""),
              "worked out: "
                  + pair.pair().around().word()
                  + " minus "
                  + pair.pair().inside().word(),
              ""));
    }
  }

  private static String unjudged(PairClearance pair) {
    return pair.said().isEmpty() ? "no limit typed" : pair.said();
  }

  private static String words(EngineJob job, Subject subject) {
    return subject.match(
        part -> job.getPart(part.item()).part().words(),
        Subject.AFeature::words,
        Subject.Beside::words);
  }

  static RecordSection debris(OpenJob job) {
    List<RecordSection.Row> rows = new ArrayList<>();
    DebrisBook book = new DebrisBook(job);
    for (DebrisFind find : book.finds()) {
      rows.add(row(false, found(find, book.notes(find)), "suspect " + find.look().suspect()));
    }
    if (!rows.isEmpty()) {
      rows.add(mains(book.map().mains()));
    }
    return new RecordSection(
        RecordTable.DEBRIS, List.of("found", "what it says"), rows, "No debris was recorded.");
  }

  /** What a person said of it tells more than our long words: the short ones stand before it. */
  private static String found(DebrisFind find, List<String> notes) {
    return notes.isEmpty()
        ? find.words()
        : find.look().brief() + ", " + find.place().words() + ": " + String.join("; ", notes);
  }

  private static RecordSection.Row mains(ReachedMains answer) {
    boolean open = answer == ReachedMains.OPEN || answer == ReachedMains.YES;
    return row(open, "Did it reach the mains?", answer.words());
  }

  static RecordSection visits(OpenJob job) {
    List<RecordSection.Row> rows = new ArrayList<>();
    for (ShopVisit visit : new MachineShop(job).visits()) {
      for (ShopVisit.Sent sent : visit.parts()) {
        rows.add(
            row(
                !sent.back(),
                "visit " + visit.number(),
                sent.part().words(),
                sent.wanted(),
                sent.back() ? "back" : "NOT BACK"));
      }
      for (ShopVisit.Line line : visit.lines()) {
        rows.add(
            row(
                line.missing() > 0,
                "visit " + visit.number(),
                line.line().count() + " " + line.line().what(),
                line.line().wanted() + line.target().map(target -> ", " + target).orElse(""),
                line.missing() > 0
                    ? line.missing() + " NOT BACK"
                    : "back " + String.join("; ", line.returned())));
      }
    }
    return new RecordSection(
        RecordTable.MACHINE_SHOP,
        List.of("visit", "what", "wanted", "back"),
        rows,
        "Nothing was sent out.");
  }

  static RecordSection tools(OpenJob open) {
    EngineJob job = open.state();
    List<RecordSection.Row> rows = new ArrayList<>();
    for (Tool tool : job.measures().tools()) {
      Optional<String> zero = job.measures().findZero(tool.name());
      List<MeasuredResult> used =
          job.measures().all().stream()
              .filter(result -> result.tool().name().equals(tool.name()))
              .toList();
      rows.add(
          row(
              zero.isEmpty() && !used.isEmpty(),
              tool.name(),
              tool.resolution().text(),
              tool.error().text(),
              zero.orElse(RecordSection.NOT_CHECKED),
              Integer.toString(used.size()),
              used.stream()
                  .map(MeasuredResult::time)
                  .max(Comparator.naturalOrder())
                  .map(time -> open.days().day(time))
                  .orElse("")));
    }
    return new RecordSection(
        RecordTable.TOOLS,
        List.of("tool", "smallest step", "largest error", "at zero", "readings", "last used"),
        rows,
        "No measuring tool is listed.");
  }

  static RecordSection photos(OpenJob open) {
    EngineJob job = open.state();
    List<RecordSection.Row> rows = new ArrayList<>();
    for (Photograph photo : Photograph.listAll(job)) {
      rows.add(
          row(false, photo.words(job), photo.story(), photo.file(), open.days().day(photo.time())));
    }
    return new RecordSection(
        RecordTable.PHOTOGRAPHS,
        List.of("of", "caption", "file", "when"),
        rows,
        "No photograph was kept.");
  }

  private static RecordSection.Row row(boolean open, String... cells) {
    return new RecordSection.Row(List.of(cells), open);
  }
}
