package wherefrom.ui.debris;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.inspection.Look;
import wherefrom.rules.debris.Clue;
import wherefrom.rules.debris.DebrisFind;
import wherefrom.rules.debris.DebrisMap;
import wherefrom.rules.debris.Opening;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;

/** What to open next, the cheapest first, and what the finds point to. */
public final class NextScreen extends ListPage {
  private final DebrisModel model;

  public NextScreen(ScreenContext context) {
    super(context, "What to open next");
    model = new DebrisModel(context.getJob());
  }

  @Override
  public String aside() {
    return model.map().openings().size() + " to open";
  }

  @Override
  protected List<Region> rows() {
    DebrisMap map = model.map();
    List<Region> rows = new ArrayList<>();
    int number = 1;
    for (Opening opening : map.openings()) {
      rows.add(row(number, opening));
      number++;
    }
    if (map.openings().isEmpty()) {
      String words =
          map.suspects().isEmpty()
              ? "Nothing found yet. Tap the map where debris lies."
              : "Everything these finds call for is opened and inspected.";
      rows.addAll(said("Nothing more to open", words));
    }
    rows.add(
        key(
            DebrisModel.words(map.question(), touch().isLarge()),
            List.of(),
            () -> open(() -> new MainsScreen(context))));
    map.suspects().forEach(clue -> rows.addAll(row(clue)));
    model.finds().forEach(find -> rows.addAll(notes(find)));
    return rows;
  }

  /** What was said of a find as it was marked. */
  private List<Region> notes(DebrisFind find) {
    List<String> notes = model.notes(find);
    return notes.isEmpty()
        ? List.of()
        : said("Noted: " + find.words(), Words.sentence(String.join("; ", notes)));
  }

  private List<Region> row(Clue clue) {
    return said(Words.capital(clue.found()), Words.capital(clue.pointsTo()));
  }

  private Region row(int number, Opening opening) {
    return key(
        number + ". " + opening.title(),
        touch().brief(opening.sentence(), ""),
        () -> ask(context, opening));
  }

  /** Asks what was seen after something was opened. */
  static void ask(ScreenContext context, Opening opening) {
    DebrisModel model = new DebrisModel(context.getJob());
    List<Choice<Look>> choices =
        DebrisModel.answers(opening).stream()
            .map(seen -> new Choice<>(seen.look(), seen.words(), seen.more()))
            .toList();
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context,
                    opening.title() + ": what was seen?",
                    choices,
                    look -> {
                      context.attempt(() -> context.say(model.opened(opening, look)));
                      context.navigator().changed();
                    }));
  }
}
