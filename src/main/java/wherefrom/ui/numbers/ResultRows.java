package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.List;
import wherefrom.text.Words;
import wherefrom.workings.MissingInputs;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Note;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.WorkingAnswer;

/** What a working answers, as rows of words. */
final class ResultRows {
  private ResultRows() {}

  /** A heading and lines below it. */
  record Row(String heading, List<String> lines) {
    Row {
      lines = List.copyOf(lines);
    }

    static Row of(String heading, String... lines) {
      return new Row(heading, List.of(lines));
    }
  }

  static List<Row> of(WorkingAnswer answer) {
    return answer.match(ResultRows::of, ResultRows::of, ResultRows::of);
  }

  static List<Row> of(MissingInputs missing) {
    return missing.inputs().stream()
        .map(input -> Row.of("Still needed: " + input.words(), input.meaning()))
        .toList();
  }

  static List<Row> of(Nonsense nonsense) {
    return List.of(Row.of("This cannot be", nonsense.sentence()));
  }

  static List<Row> of(Result result) {
    List<Row> rows = new ArrayList<>();
    result.values().forEach(value -> rows.add(of(value)));
    for (Note note : result.notes()) {
      rows.add(Row.of(heading(note), note.text(), Words.source(note.source().text())));
    }
    if (!result.takenAsExact().isEmpty()) {
      rows.add(Row.of("Taken as exact", String.join(", ", result.takenAsExact())));
    }
    return rows;
  }

  static Row of(ResultValue value) {
    return Row.of(Words.capital(value.words()) + ": " + value.text(), better(value));
  }

  static String heading(Note note) {
    return switch (note.kind()) {
      case CONCLUSION -> "Conclusion";
      case CAUTION -> "Caution";
      case QUESTION -> "Is this right?";
      case LACKING, REMARK -> "Note";
    };
  }

  /** {@code Most of the ± comes from: chamber (72 %)}; empty where no input had a band. */
  static String better(ResultValue value) {
    return value
        .findBiggestShare()
        .map(
            share ->
                "Most of the ± comes from: "
                    + share.inputWords()
                    + " ("
                    + Math.round(100 * share.fraction())
                    + " %).")
        .orElse("");
  }
}
