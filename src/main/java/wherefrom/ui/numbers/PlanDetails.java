package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wherefrom.job.numbers.PlanEffects;
import wherefrom.text.Words;
import wherefrom.workings.Note;
import wherefrom.workings.ResultValue;
import wherefrom.workings.plan.Margin;
import wherefrom.workings.plan.PlanAnswer;
import wherefrom.workings.plan.PlanColumn;

/** One column of the plan in words. */
final class PlanDetails {
  private PlanDetails() {}

  /** Bands, margins with their source, what to measure better, what is to be known. */
  static List<ResultRows.Row> of(PlanAnswer answer) {
    if (answer instanceof PlanAnswer.Refused refused) {
      return List.of(ResultRows.Row.of("This cannot be", refused.nonsense().sentence()));
    }
    PlanColumn column = (PlanColumn) answer;
    List<ResultRows.Row> rows = new ArrayList<>();
    for (ResultValue value : column.result().values()) {
      String margin =
          column.margins().stream()
              .filter(m -> m.result().key().equals(value.key()))
              .map(PlanDetails::standing)
              .collect(Collectors.joining(" "));
      rows.add(
          ResultRows.Row.of(
              Words.capital(value.words()) + ": " + value.text(),
              margin,
              ResultRows.better(value)));
    }
    for (Note note : column.result().notes()) {
      rows.add(
          ResultRows.Row.of(
              ResultRows.heading(note), note.text(), Words.source(note.source().text())));
    }
    column.consequences().forEach(c -> rows.add(ResultRows.Row.of("What changes", c.words())));
    return rows;
  }

  private static String standing(Margin margin) {
    String standing =
        switch (margin.standing()) {
          case CLEAR -> "More than the usual minimum, ";
          case UNDECIDED -> "Too near to say: usual minimum ";
          case NOT_KNOWN -> "Not known, measure again: usual minimum ";
          case UNDER -> "Less than the usual minimum, ";
          case TOUCHES -> margin.gap().touchWords() + ". Usual minimum ";
        };
    return standing
        + margin.least().words()
        + " ("
        + margin.least().source().text()
        + "). Your engine's limit counts.";
  }

  /** What is to be bought, done and checked, with its money. */
  static List<ResultRows.Row> of(Optional<PlanEffects> found) {
    if (found.isEmpty()) {
      return List.of(ResultRows.Row.of("Nothing follows", "Choose an idea that differs from now."));
    }
    PlanEffects effects = found.get();
    List<ResultRows.Row> rows = new ArrayList<>();
    rows.add(
        ResultRows.Row.of(
            "Together: " + effects.sumWords(),
            effects.isPriced() ? effects.cost().total() : "",
            "Type prices under Money, with these names."));
    effects.lines().forEach(line -> rows.add(ResultRows.Row.of(line.sentence())));
    effects.checks().forEach(check -> rows.add(ResultRows.Row.of("Check", check)));
    return rows;
  }
}
