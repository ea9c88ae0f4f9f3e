package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.layout.Region;
import wherefrom.text.Words;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;

/** Rows of words to be read. */
public final class RowsScreen extends ListPage {
  private final List<ResultRows.Row> all;

  RowsScreen(ScreenContext context, String title, List<ResultRows.Row> all) {
    super(context, title, false);
    this.all = List.copyOf(all);
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    for (ResultRows.Row row : all) {
      String words =
          row.lines().stream().filter(line -> !line.isEmpty()).collect(Collectors.joining(" "));
      rows.add(touch().isLarge() ? parted(row.heading(), words) : told(row.heading(), words));
    }
    return rows;
  }

  /** Large letters leave a heading room for a name: the figure behind it is read below. */
  private Region parted(String heading, String words) {
    int colon = heading.indexOf(": ");
    return colon < 0
        ? told(heading, words)
        : told(
            heading.substring(0, colon),
            (Words.sentence(heading.substring(colon + 2)) + " " + words).strip());
  }
}
