package wherefrom.job.pages;

import java.util.List;

/**
 * A table of the build record.
 *
 * @param empty what is said where there are no rows
 */
public record RecordSection(RecordTable table, List<String> columns, List<Row> rows, String empty) {
  /** What a cell says of what nobody checked. */
  public static final String NOT_CHECKED = "NOT CHECKED";

  /** The column of reasons, or of the places that a row counts. */
  public static final String BECAUSE = "because";

  /**
   * A row.
   *
   * @param open true where something was not checked; it stands out
   */
  public record Row(List<String> cells, boolean open) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  public RecordSection {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  public String title() {
    return table.title();
  }
}
