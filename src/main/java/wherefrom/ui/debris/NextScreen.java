package wherefrom.ui.debris;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.inspection.Look;
import wherefrom.rules.debris.DebrisMap;
import wherefrom.rules.debris.Opening;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;

/** What to open next, the cheapest first, and what the finds point to. */
public final class NextScreen implements Screen {
  private final Desk desk;
  private final DebrisModel model;
  private final Pager<Region> rows;

  public NextScreen(Desk desk) {
    this.desk = desk;
    model = new DebrisModel(desk.getJob());
    rows = Pager.list(desk.touch(), row -> row);
  }

  @Override
  public String title() {
    return "What to open next";
  }

  @Override
  public Region view() {
    return rows;
  }

  @Override
  public void shown() {
    DebrisMap map = model.map();
    List<Region> lines = new ArrayList<>();
    int number = 1;
    for (Opening opening : map.openings()) {
      lines.add(row(number, opening));
      number++;
    }
    if (map.openings().isEmpty()) {
      String words =
          map.suspects().isEmpty()
              ? "Nothing found yet. Tap the map where debris lies."
              : "Everything these finds call for is opened and inspected.";
      lines.add(ListRow.told(desk.touch(), "Nothing more to open", words));
    }
    lines.add(
        ListRow.key(
            desk.touch(),
            DebrisModel.words(map.question(), false),
            List.of(),
            () -> desk.navigator().open(() -> new MainsScreen(desk))));
    map.suspects().forEach(suspect -> lines.add(row(suspect)));
    rows.refill(lines);
  }

  @Override
  public void changed() {
    shown();
  }

  private Region row(String suspect) {
    int colon = suspect.indexOf(": ");
    return ListRow.plain(
        desk.touch(),
        Words.capital(suspect.substring(0, colon)),
        List.of(Words.capital(suspect.substring(colon + 2))));
  }

  private Region row(int number, Opening opening) {
    return ListRow.key(
        desk.touch(),
        number + ". " + opening.title(),
        List.of(opening.sentence()),
        () -> ask(desk, opening));
  }

  /** Asks what was seen after something was opened. */
  static void ask(Desk desk, Opening opening) {
    DebrisModel model = new DebrisModel(desk.getJob());
    List<Choice<Look>> choices =
        DebrisModel.answers(opening).stream()
            .map(seen -> new Choice<>(seen.look(), seen.words(), seen.more()))
            .toList();
    desk.navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    desk,
                    opening.title() + ": what was seen?",
                    choices,
                    look -> {
                      desk.attempt(() -> desk.say(model.opened(opening, look)));
                      desk.navigator().changed();
                    }));
  }
}
