package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;

/** What there is to read about one thing: headings, and sentences below them. */
public final class WordsScreen extends ListPage {
  /** A heading with what is said under it. */
  public record Paragraph(String heading, String words) {}

  private final List<Paragraph> paragraphs;

  public WordsScreen(ScreenContext context, String title, List<Paragraph> paragraphs) {
    super(context, title);
    this.paragraphs = List.copyOf(paragraphs);
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    paragraphs.forEach(one -> rows.add(told(one.heading(), one.words())));
    return rows;
  }
}
