package wherefrom.files;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Comma-separated values (RFC 4180): fields in quotes where they must be, and none that a
 * spreadsheet takes for a formula.
 */
public final class Csv {
  private Csv() {}

  /** Rows as text, each ended by a carriage return and a line feed. */
  public static String write(List<List<String>> rows) {
    StringWriter text = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
      rows.forEach(row -> csv.writeRecord(row.stream().map(CsvText::marked).toList()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  /**
   * Text as rows; an empty line is left out. The library that writes reads on to the end where a
   * quote is left open; a person is told the row instead.
   *
   * @throws IllegalArgumentException with a plain sentence when a quoted field does not end
   */
  public static List<List<String>> read(String text) {
    List<List<String>> rows = new ArrayList<>();
    List<String> row = new ArrayList<>();
    StringBuilder field = new StringBuilder();
    boolean quoted = false;
    for (int at = 0; at < text.length(); at++) {
      char c = text.charAt(at);
      if (quoted && c == '"' && at + 1 < text.length() && text.charAt(at + 1) == '"') {
        field.append('"');
        at++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && c == ',') {
        row.add(take(field));
      } else if (!quoted && c == '\n') {
        row.add(take(field));
        end(rows, row);
      } else if (quoted || c != '\r') {
        field.append(c);
      }
    }
    if (quoted) {
      throw new IllegalArgumentException(
          "A field in quotes does not end: row " + (rows.size() + 1));
    }
    row.add(take(field));
    end(rows, row);
    return rows;
  }

  private static String take(StringBuilder field) {
    String value = field.toString();
    field.setLength(0);
    return CsvText.unmarked(value);
  }

  private static void end(List<List<String>> rows, List<String> row) {
    if (row.size() > 1 || !row.get(0).isEmpty()) {
      rows.add(List.copyOf(row));
    }
    row.clear();
  }
}
