package wherefrom.job.tables;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import wherefrom.engine.ValveSpot;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Judgement;
import wherefrom.inspection.measure.Limit;
import wherefrom.inspection.measure.Sample;
import wherefrom.job.BearingClearance;
import wherefrom.job.EngineJob;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OilClearances;
import wherefrom.job.OpenJob;
import wherefrom.job.PairClearance;
import wherefrom.job.PairClearances;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;
import wherefrom.job.timing.LiftReading;
import wherefrom.job.timing.TimingBook;
import wherefrom.quantity.Amount;
import wherefrom.workings.ResultValue;

/** What was measured: each result beside its limit, and each reading as it was typed. */
final class ReadingTables {
  private final EngineJob job;
  private final Rows rows =
      new Rows(
          "readings",
          "kind",
          "where",
          "subject",
          "plan",
          "result",
          "value",
          "unit",
          "standard_uncertainty",
          "limit_least",
          "limit_most",
          "limit_source",
          "verdict",
          "probability_within",
          "tool",
          "zero",
          "utc");

  private ReadingTables(EngineJob job) {
    this.job = job;
  }

  /** A row a result; those of oil clearances are worked out of others. */
  static TidyTable results(EngineJob job) {
    ReadingTables table = new ReadingTables(job);
    for (MeasuredResult result : job.measures().all()) {
      result.values().forEach(value -> table.result(result, value));
      result.judgedUnfound().forEach(unfound -> table.unfound(result, unfound));
    }
    new OilClearances(job).list().forEach(table::oil);
    new PairClearances(job).measured().forEach(table::pair);
    return table.rows.table();
  }

  /** Of the range the worse end is judged; the verdict stands with both. */
  private void oil(BearingClearance bearing) {
    Feature feature = bearing.journal().feature();
    Clearance clearance =
        new Clearance(
            feature.key(),
            bearing.journal().where(),
            bearing.words(),
            "oil-clearance",
            bearing.judgement());
    bearing.range().ifPresent(range -> clearance(clearance, range.smallest(), "least"));
    bearing.range().ifPresent(range -> clearance(clearance, range.largest(), "most"));
  }

  /** A row a facing and end; the verdict is of the pair at its place. */
  private void pair(PairClearance pair) {
    Clearance clearance =
        new Clearance(
            pair.pair().around().of(),
            pair.where(),
            pair.words(),
            pair.pair().key(),
            pair.judgement());
    for (PairClearance.At at : pair.facings()) {
      clearance(clearance, at.least(), at.facing().key() + "-least");
      clearance(clearance, at.most(), at.facing().key() + "-most");
    }
  }

  /** What is worked out of two readings: what it is of, and how it was judged. */
  private record Clearance(
      String kind, String where, String words, String plan, Optional<Judgement> judged) {}

  private void clearance(Clearance of, ResultValue value, String result) {
    Optional<Judgement> judged = of.judged();
    rows.add(
        TidyCell.of(of.kind()),
        TidyCell.of(of.where()),
        TidyCell.of(of.words()),
        TidyCell.of(of.plan()),
        TidyCell.of(result),
        TidyCell.of(value.value()),
        TidyCell.of(value.unit().symbol()),
        TidyCell.of(value.standardUncertainty()),
        end(judged.flatMap(one -> one.limit().lower()), value),
        end(judged.flatMap(one -> one.limit().upper()), value),
        TidyCell.of(judged.map(Judgement::limit).map(Limit::source).orElse("")),
        TidyCell.of(judged.map(ReadingTables::verdict).orElse("")),
        TidyCell.NONE,
        TidyCell.of("worked out"),
        TidyCell.NONE,
        TidyCell.NONE);
  }

  private void result(MeasuredResult result, ResultValue value) {
    Optional<Judgement> judged =
        result.judgements().stream()
            .filter(one -> one.value().key().equals(value.key()))
            .findFirst();
    result(result, value.key(), value, judged);
  }

  /** What could not be worked out is judged all the same: nobody takes it for good. */
  private void unfound(MeasuredResult result, Judgement unfound) {
    result(result, MeasuredResult.unfoundKey(unfound), unfound.value(), Optional.of(unfound));
  }

  private void result(
      MeasuredResult result, String key, ResultValue value, Optional<Judgement> judged) {
    rows.add(
        TidyCell.of(SubjectNames.kind(job, result.subject())),
        TidyCell.of(SubjectNames.where(job, result.subject())),
        TidyCell.of(SubjectNames.words(job, result.subject())),
        TidyCell.of(result.plan().key()),
        TidyCell.of(key),
        TidyCell.of(value.value()),
        TidyCell.of(value.unit().symbol()),
        TidyCell.of(value.standardUncertainty()),
        end(judged.flatMap(one -> one.limit().lower()), value),
        end(judged.flatMap(one -> one.limit().upper()), value),
        TidyCell.of(judged.map(Judgement::limit).map(Limit::source).orElse("")),
        TidyCell.of(judged.map(ReadingTables::verdict).orElse("")),
        TidyCell.of(judged.map(one -> BigDecimal.valueOf(one.probability()))),
        TidyCell.of(result.tool().name()),
        TidyCell.of(result.zero().orElse("")),
        TidyCell.of(result.time()));
  }

  private static String verdict(Judgement judgement) {
    return judgement.decision().name().toLowerCase(Locale.ROOT);
  }

  /** A limit in the unit of what it bounds. */
  private static TidyCell end(Optional<Amount> limit, ResultValue value) {
    return TidyCell.of(limit.map(amount -> amount.to(value.unit()).number()));
  }

  /** A row a reading, as it was typed; those on the degree wheel, too. */
  static TidyTable samples(OpenJob open) {
    EngineJob job = open.state();
    Rows rows =
        new Rows(
            "samples", "kind", "where", "subject", "plan", "station", "number", "reading", "unit",
            "tool", "utc");
    for (MeasuredResult result : job.measures().all()) {
      for (Sample sample : result.samples()) {
        for (int at = 0; at < sample.readings().size(); at++) {
          Amount reading = sample.readings().get(at);
          rows.add(
              TidyCell.of(SubjectNames.kind(job, result.subject())),
              TidyCell.of(SubjectNames.where(job, result.subject())),
              TidyCell.of(SubjectNames.words(job, result.subject())),
              TidyCell.of(result.plan().key()),
              TidyCell.of(sample.station().key()),
              TidyCell.of(at + 1),
              TidyCell.of(reading.number()),
              TidyCell.of(reading.unit().symbol()),
              TidyCell.of(result.tool().name()),
              TidyCell.of(result.time()));
        }
      }
    }
    lifts(rows, new TimingBook(open));
    return rows.table();
  }

  private static void lifts(Rows rows, TimingBook book) {
    for (ValveSpot spot : book.lobes()) {
      Subject.AFeature lobe = new Subject.AFeature(Feature.LOBE, spot.key());
      for (LiftReading reading : book.readings(spot)) {
        rows.add(
            TidyCell.of(lobe.feature().key()),
            TidyCell.of(lobe.where()),
            TidyCell.of(lobe.words()),
            TidyCell.of("degree-wheel"),
            TidyCell.of(reading.degrees().text()),
            TidyCell.of(1),
            TidyCell.of(reading.lift().number()),
            TidyCell.of(reading.lift().unit().symbol()),
            TidyCell.of("degree wheel, dial"),
            TidyCell.NONE);
      }
    }
  }
}
