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

  Answer(PrintStream out, PrintStream err, boolean json) {
    this.out = out;
    this.err = err;
    this.json = json;
  }

  /** One of a list: an element of the JSON document, which is then an array. */
  void row(Fields fields, String... lines) {
    rows.add(fields.all());
    print(List.of(lines));
  }

  /** The one row to come is all there is: the JSON document is an object. */
  void alone() {
    single = true;
  }

  /** All there is: the JSON document is this object. */
  void only(Fields fields, List<String> lines) {
    alone();
    row(fields, lines.toArray(String[]::new));
  }

  void only(Fields fields, String... lines) {
    only(fields, List.of(lines));
  }

  /** Standard output is a file's from now on: what is answered goes to standard error. */
  OutputStream giveWay() {
    gaveWay = true;
    return out;
  }

  private PrintStream stream() {
    return gaveWay ? err : out;
  }

  private void print(List<String> lines) {
    if (!json) {
      lines.stream().filter(line -> !line.isEmpty()).forEach(stream()::println);
    }
  }

  /** Said beside the answer, on standard error. */
  void say(String sentence) {
    err.println(sentence);
  }

  void finish() {
    if (json) {
      stream().println(Json.text(single && rows.size() == 1 ? rows.get(0) : rows));
    }
  }

  /** A value of a row: a tab or a line end in it would look like the next value. */
  static String cell(String text) {
    return text.replaceAll("[\\p{Cntrl}]+", " ");
  }

  /** Values with tabs between them. */
  static String cells(String... texts) {
    List<String> cells = new ArrayList<>();
    for (String text : texts) {
      cells.add(cell(text));
    }
    return String.join("\t", cells);
  }
}
