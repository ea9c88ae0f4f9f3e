package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import wherefrom.workings.Note;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.Share;

/** Results of workings as lines and as JSON. */
final class ResultFields {
  private ResultFields() {}

  static Fields of(Result result) {
    return Fields.of("results", result.values().stream().map(ResultFields::of).toList())
        .and("notes", result.notes().stream().map(ResultFields::of).toList())
        .and("takenAsExact", result.takenAsExact());
  }

  static Fields of(ResultValue value) {
    return Fields.of("key", value.key())
        .and("words", value.words())
        .and("value", value.value())
        .and("unit", value.unit().symbol())
        .and("standardUncertainty", value.standardUncertainty())
        .and("text", value.text())
        .and("shares", value.shares().stream().map(ResultFields::of).toList());
  }

  private static Fields of(Share share) {
    return Fields.of("input", share.inputKey()).and("fraction", share.fraction());
  }

  private static Fields of(Note note) {
    return Fields.of("kind", note.kind().name().toLowerCase(java.util.Locale.ROOT))
        .and("key", note.key())
        .and("text", note.text())
        .and("source", note.source().text());
  }

  /** A line a result: key, value with band, what to measure better; then the notes. */
  static List<String> lines(Result result) {
    List<String> lines = new ArrayList<>();
    for (ResultValue value : result.values()) {
      lines.add(Answer.cells(value.key(), value.text(), better(value)));
    }
    for (Note note : result.notes()) {
      lines.add(Answer.cells("note", note.text() + " (" + note.source().text() + ")"));
    }
    if (!result.takenAsExact().isEmpty()) {
      lines.add(
          Answer.cells("note", "Taken as exact: " + String.join(", ", result.takenAsExact())));
    }
    return lines;
  }

  /** {@code measure chamber better: 72 % of the band}; empty where no input had a band. */
  static String better(ResultValue value) {
    return value
        .findBiggestShare()
        .map(
            share ->
                "measure "
                    + share.inputWords()
                    + " better: "
                    + Math.round(100 * share.fraction())
                    + " % of the band")
        .orElse("");
  }
}
