package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wherefrom.workings.Note;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.Share;

/** What a working gave: a line a result, then the notes. */
record WorkedRow(List<Value> results, List<Remark> notes, List<String> takenAsExact)
    implements Row {

  /**
   * A result.
   *
   * @param shares which inputs its uncertainty comes from
   */
  record Value(
      String key,
      String words,
      double value,
      String unit,
      double standardUncertainty,
      String text,
      List<Part> shares,
      Row.Beside better) {
    static Value of(ResultValue value) {
      return new Value(
          value.key(),
          value.words(),
          value.value(),
          value.unit().symbol(),
          value.standardUncertainty(),
          value.text(),
          value.shares().stream().map(Part::of).toList(),
          new Row.Beside(toMeasureBetter(value)));
    }

    /** Key, value with band, what to measure better. */
    String line() {
      return Answer.cells(key, text, better.text());
    }
  }

  /** A share of an uncertainty. */
  record Part(String input, double fraction) {
    static Part of(Share share) {
      return new Part(share.inputKey(), share.fraction());
    }
  }

  /** What is to be known of a result. */
  record Remark(String kind, String key, String text, String source) {
    static Remark of(Note note) {
      String kind = note.kind().name().toLowerCase(Locale.ROOT);
      return new Remark(kind, note.key(), note.text(), note.source().text());
    }
  }

  static WorkedRow of(Result result) {
    return new WorkedRow(
        result.values().stream().map(Value::of).toList(),
        result.notes().stream().map(Remark::of).toList(),
        result.takenAsExact());
  }

  /** {@code measure chamber better: 72 % of the band}; empty where no input had a band. */
  private static String toMeasureBetter(ResultValue value) {
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

  @Override
  public String text() {
    List<String> lines = new ArrayList<>();
    results.forEach(value -> lines.add(value.line()));
    notes.forEach(
        note -> lines.add(Answer.cells("note", note.text() + " (" + note.source() + ")")));
    if (!takenAsExact.isEmpty()) {
      lines.add(Answer.cells("note", "Taken as exact: " + String.join(", ", takenAsExact)));
    }
    return String.join("\n", lines);
  }
}
