package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;

/** What there is to read about one thing: headings, and sentences below them. */
public final class WordsScreen extends ListPage {
  /** A heading with what is said under it. */
  public record Line(String heading, String words) {}

  private final List<Line> lines;

  public WordsScreen(ScreenContext context, String title, List<Line> lines) {
    super(context, title);
    this.lines = List.copyOf(lines);
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    lines.forEach(line -> rows.addAll(said(line.heading(), line.words())));
    return rows;
  }
}
