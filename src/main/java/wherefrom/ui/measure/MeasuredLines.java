package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Judgement;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OilClearances;
import wherefrom.job.OpenJob;
import wherefrom.job.PairClearances;
import wherefrom.text.Words;
import wherefrom.workings.ResultValue;
import wherefrom.workings.catalogue.accept.Acceptance;

/** What was worked out, a line each, with its answer where there is a limit. */
final class MeasuredLines {

  /** A line: the answer or the result's name, and what is so. */
  record Line(String heading, String words) {}

  /** The guard band of the decision rule, {@link Acceptance#GUARD_FACTOR}. */
  private static final Line BEHIND =
      new Line(
          "What ± means",
          "The figure after ± is the standard uncertainty. A limit must be "
              + Acceptance.GUARD_FACTOR
              + " times that away (ISO 14253-1).");

  private MeasuredLines() {}

  static List<Line> of(OpenJob job, MeasuredResult result) {
    List<Line> lines = new ArrayList<>();
    for (ResultValue value : result.values()) {
      Optional<Judgement> judged =
          result.judgements().stream()
              .filter(judgement -> judgement.value().key().equals(value.key()))
              .findFirst();
      String name = Words.capital(value.words()) + " " + value.text();
      lines.add(
          judged
              .map(judgement -> new Line(name + ": " + word(judgement), told(judgement)))
              .orElse(new Line(name, "no limit typed")));
    }
    for (Judgement judged : result.judgedUnfound()) {
      String name = Words.capital(judged.value().words()) + " " + judged.value().text();
      lines.add(new Line(name + ": " + word(judged), told(judged)));
    }
    bearing(job, result.subject()).ifPresent(lines::add);
    lines.addAll(pairs(job, result));
    if (result.values().stream().anyMatch(ResultValue::showsSpread)) {
      lines.add(BEHIND);
    }
    if (result.confirmed()) {
      lines.add(new Line("Questioned", "a reading looked like a slip and was confirmed"));
    }
    lines.add(
        new Line(
            "Tool: " + result.tool().name(),
            result.zero().map(MeasuredLines::zero).orElse("Its zero was not checked.")));
    return lines;
  }

  private static String zero(String shown) {
    return "It showed " + shown + " at zero.";
  }

  private static Optional<Line> bearing(OpenJob job, Subject subject) {
    return new OilClearances(job.state())
        .find(subject)
        .map(found -> new Line("Oil clearance, " + found.words(), found.sentence()));
  }

  /** The clearances that these readings are half of. */
  private static List<Line> pairs(OpenJob job, MeasuredResult result) {
    return new PairClearances(job.state())
        .find(result.subject()).stream()
            .filter(one -> one.pair().isBy(result.plan()))
            .map(one -> new Line(one.pair().title() + ", " + one.words(), one.sentence()))
            .toList();
  }

  static String word(Judgement judgement) {
    return switch (judgement.decision()) {
      case ACCEPT -> "ACCEPT";
      case UNDECIDED -> "UNDECIDED";
      case REJECT -> "REJECT";
    };
  }

  /** The answer in a plain sentence (ISO 14253-1), with the limit and its source. */
  static String told(Judgement judgement) {
    String limit = judgement.limit().words() + " (" + judgement.limit().source() + ")";
    return switch (judgement.decision()) {
      case ACCEPT -> "Within the limit with the tool's uncertainty: " + limit + ".";
      case UNDECIDED ->
          "Too near the limit for this tool: "
              + limit
              + ". Use a better tool, or ask the machine shop.";
      case REJECT -> "Outside the limit with the tool's uncertainty: " + limit + ".";
    };
  }
}
