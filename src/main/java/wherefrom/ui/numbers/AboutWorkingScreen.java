package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.text.Words;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.workings.InputSpec;
import wherefrom.workings.WorkingCard;

/** A working's formula, its source, what is not known, and what each figure means. */
public final class AboutWorkingScreen extends ListPage {
  private final WorkingCard card;

  AboutWorkingScreen(ScreenContext context, WorkingCard card) {
    super(context, card.title(), false);
    this.card = card;
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>(List.of(told("Formula", card.formula())));
    rows.add(told("Source", Words.capital(card.source().text())));
    card.limits().forEach(limit -> rows.add(told("Not known", limit)));
    for (InputSpec input : card.inputs()) {
      rows.add(told(Words.capital(input.words()), input.meaning()));
    }
    return rows;
  }
}
