package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import wherefrom.workings.Note;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.Share;

/** What a working gave: a line a result, then the notes. */
record WorkedRow(List<Value> results, List<Remark> notes, List<String> takenAsExact)
    implements Row {

  /** A result, and which inputs its uncertainty comes from. */
  record Value(ResultValue value) implements Row {
    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "key", value.key(),
          "words", value.words(),
          "value", value.value(),
          "unit", value.unit().symbol(),
          "standardUncertainty", value.standardUncertainty(),
          "text", value.text(),
          "shares", value.shares().stream().map(Value::share).toList());
    }

    private static Map<String, Object> share(Share share) {
      return Json.object("input", share.inputKey(), "fraction", share.fraction());
    }

    /** Key, value with band, what to measure better. */
    @Override
    public String text() {
      return Answer.cells(value.key(), value.text(), toMeasureBetter(value));
    }
  }

  /** What is to be known of a result. */
  record Remark(Note note) implements Row {
    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "kind", note.kind().id(),
          "key", note.key(),
          "text", note.text(),
          "source", note.source().text());
    }

    @Override
    public String text() {
      return Answer.cells("note", note.text() + " (" + note.source().text() + ")");
    }
  }

  static WorkedRow of(Result result) {
    return new WorkedRow(
        result.values().stream().map(Value::new).toList(),
        result.notes().stream().map(Remark::new).toList(),
        result.takenAsExact());
  }

  /** {@code most of the ± comes from: chamber (72 %)}; empty where no input had a band. */
  private static String toMeasureBetter(ResultValue value) {
    return value
        .findBiggestShare()
        .map(
            share ->
                "most of the ± comes from: "
                    + share.inputWords()
                    + " ("
                    + Math.round(100 * share.fraction())
                    + " %)")
        .orElse("");
  }

  @Override
  public String text() {
    List<String> lines = new ArrayList<>();
    results.forEach(value -> lines.add(value.text()));
    notes.forEach(note -> lines.add(note.text()));
    if (!takenAsExact.isEmpty()) {
      lines.add(Answer.cells("note", "Taken as exact: " + String.join(", ", takenAsExact)));
    }
    return Row.lines(lines);
  }
}
