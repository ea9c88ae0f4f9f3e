package wherefrom.ui.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.pages.RecordSection;
import wherefrom.text.Words;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;

/** One table of the build record, what is open first. */
public final class RecordTableScreen extends Page {
  /** Before each row that is open. */
  private static final String OPEN = "■ ";

  private final RecordSection section;
  private final Pager<Region> rows;

  RecordTableScreen(ScreenContext context, RecordSection section) {
    super(context, section.title());
    this.section = section;
    rows = Pager.list(context.touch(), row -> row);
    List<Region> lines = new ArrayList<>();
    section.rows().stream()
        .sorted(Comparator.comparing(row -> !row.open()))
        .forEach(row -> lines.add(row(context, row)));
    if (lines.isEmpty()) {
      lines.add(ListRow.told(context.touch(), section.title(), section.empty()));
    }
    rows.setItems(lines);
    lay(rows);
  }

  /** What the mark before a row means, and how many have it. */
  @Override
  public String aside() {
    long open = section.rows().stream().filter(RecordSection.Row::open).count();
    return open == 0 ? "" : OPEN + open + " open";
  }

  /** A cell with the word of its column, where it does not speak for itself. */
  private static String told(String column, String cell) {
    boolean loud = cell.chars().allMatch(Character::isUpperCase);
    boolean speaks = cell.endsWith(".") || cell.endsWith("no source") || loud;
    return speaks || column.equals(RecordSection.BECAUSE) ? cell : column + ": " + cell;
  }

  /** The first cell as the heading, the others with what they are. */
  private ListRow row(ScreenContext context, RecordSection.Row row) {
    List<String> rest = new ArrayList<>();
    for (int at = 1; at < row.cells().size(); at++) {
      if (!row.cells().get(at).isEmpty()) {
        rest.add(told(section.columns().get(at), row.cells().get(at)));
      }
    }
    String mark = row.open() ? OPEN : "";
    ListRow line =
        ListRow.plain(
            context.touch(),
            mark + Words.capital(row.cells().get(0)),
            List.of(Words.capital(String.join(" · ", rest))));
    if (row.open()) {
      line.getStyleClass().add("open-row");
    }
    return line;
  }
}
