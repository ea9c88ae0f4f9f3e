package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;

/** What there is to read about one thing: headings, and sentences below them. */
public final class WordsScreen extends ListPage {
  /** Large letters leave no page for more of a sentence at a time. */
  private static final int MOST_LARGE = 70;

  /** A heading with what is said under it. */
  public record Line(String heading, String words) {}

  private final List<Line> lines;

  public WordsScreen(Desk desk, String title, List<Line> lines) {
    super(desk, title);
    this.lines = List.copyOf(lines);
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    for (Line line : lines) {
      String heading = line.heading();
      for (String piece : pieces(line.words())) {
        rows.add(told(heading, piece));
        heading = "";
      }
    }
    return rows;
  }

  private List<String> pieces(String words) {
    List<String> pieces = new ArrayList<>();
    String rest = words;
    while (touch().isLarge() && rest.length() > MOST_LARGE) {
      int end = rest.lastIndexOf(' ', MOST_LARGE);
      if (end <= 0) {
        break;
      }
      pieces.add(rest.substring(0, end));
      rest = rest.substring(end + 1);
    }
    pieces.add(rest);
    return pieces;
  }
}
