package wherefrom.job.pages;

import java.util.List;
import wherefrom.inspection.Look;

/**
 * Results of things that stand beside each other, such as the mains: a row a result.
 *
 * @param columns what stands beside each other
 */
public record RecordGrid(List<String> columns, List<Row> rows) {
  public RecordGrid {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * A row.
   *
   * @param limit in words, said once; may be empty
   * @param source where the limit comes from; may be empty
   * @param cells one a column; an empty one where nothing was measured
   */
  public record Row(String name, String limit, String source, List<Cell> cells) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /** A figure or a word, and what the mark beside it says. */
  public record Cell(String text, Look look) {
    /** Nothing was measured. */
    public static final Cell NONE = new Cell("", Look.NOT_LOOKED);
  }
}
