package wherefrom.cli;

import java.io.OutputStream;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What a command answers: lines as they come, or one JSON document at the end. */
final class Answer {
  private final PrintStream out;
  private final PrintStream err;
  private final boolean json;
  private final List<Map<String, Object>> rows = new ArrayList<>();
  private boolean single;
  private boolean gaveWay;
  private String fault = "";

  Answer(PrintStream out, PrintStream err, boolean json) {
    this.out = out;
    this.err = err;
    this.json = json;
  }

  /** One of a list: an element of the JSON document, which is then an array. */
  void row(Row row) {
    if (json) {
      rows.add(row.fields());
    } else {
      row.text().lines().filter(line -> !line.isEmpty()).forEach(stream()::println);
    }
  }

  /** The one row to come is all there is: the JSON document is an object. */
  void alone() {
    single = true;
  }

  /** All there is: the JSON document is this object, and everything was right. */
  Status only(Row row) {
    alone();
    row(row);
    return Status.RIGHT;
  }

  /** Standard output is a file's from now on: what is answered goes to standard error. */
  OutputStream giveWay() {
    gaveWay = true;
    return out;
  }

  private PrintStream stream() {
    return gaveWay ? err : out;
  }

  /** Said beside the answer, on standard error. */
  void say(String sentence) {
    err.println(sentence);
  }

  /** Says what is wrong with one of the codes of a call. */
  void fault(String sentence) {
    say(sentence);
    fault = sentence;
  }

  /** Ends the answer: the JSON document is written. */
  void finish() {
    if (json) {
      stream().println(Json.text(document()));
    }
  }

  private Object document() {
    if (!single || rows.size() > 1) {
      return rows;
    }
    return rows.isEmpty() ? error(fault) : rows.get(0);
  }

  private static Map<String, Object> error(String sentence) {
    return Map.of("error", sentence);
  }

  /**
   * Ends the answer of a call that cannot be carried out: said on standard error, and as JSON where
   * the document would stand.
   *
   * @param lines the sentence, and what stands below it
   */
  void refuse(String sentence, String lines) {
    say(lines);
    if (json) {
      stream().println(Json.text(error(sentence)));
    }
  }

  /** A value of a row: a tab or a line end in it would look like the next value. */
  static String cell(String text) {
    return text.replaceAll("[\\p{Cntrl}]+", " ");
  }

  /** Values with tabs between them. */
  static String cells(Object... values) {
    List<String> cells = new ArrayList<>();
    for (Object value : values) {
      cells.add(cell(String.valueOf(value)));
    }
    return String.join("\t", cells);
  }
}
