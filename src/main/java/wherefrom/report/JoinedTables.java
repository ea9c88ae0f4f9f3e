package wherefrom.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;

/**
 * The tables as they stand on paper: those that say something, then one table with a row for each
 * in which nothing was entered. A title over a single sentence would take the room of three rows.
 */
final class JoinedTables {
  private JoinedTables() {}

  /** None of them is without rows. */
  static List<RecordSection> of(List<RecordSection> sections) {
    List<RecordSection> tables = new ArrayList<>();
    List<RecordSection.Row> nothing = new ArrayList<>();
    for (RecordSection section : sections) {
      if (section.rows().stream().allMatch(JoinedTables::isUntouched)) {
        nothing.add(row(section));
      } else {
        tables.add(section);
      }
    }
    if (!nothing.isEmpty()) {
      tables.add(
          new RecordSection(
              RecordTable.NOTHING_ENTERED, List.of("table", "what it says"), nothing, ""));
    }
    return tables;
  }

  /** The row says what it is about, that it was not checked, and no more. */
  private static boolean isUntouched(RecordSection.Row row) {
    List<String> said = row.cells().stream().skip(1).filter(cell -> !cell.isEmpty()).toList();
    return said.equals(List.of(RecordSection.NOT_CHECKED));
  }

  private static RecordSection.Row row(RecordSection section) {
    String words = section.rows().isEmpty() ? section.empty() : unchecked(section);
    boolean open = words.contains(RecordSection.NOT_CHECKED);
    return new RecordSection.Row(List.of(section.title(), words), open);
  }

  private static String unchecked(RecordSection section) {
    return section.rows().stream()
        .map(row -> row.cells().get(0))
        .collect(Collectors.joining("; ", "", ": " + RecordSection.NOT_CHECKED));
  }
}
