package wherefrom.ui.debris;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.inspection.Look;
import wherefrom.rules.debris.Clue;
import wherefrom.rules.debris.DebrisFind;
import wherefrom.rules.debris.Opening;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.WordsScreen;

/** What to open next, the cheapest first. */
public final class NextScreen extends ListPage {
  private static final String POINTS = "What it points to";

  private final DebrisModel model;
  private final KeyRow keys;

  public NextScreen(ScreenContext context) {
    super(context, "What to open next");
    model = new DebrisModel(context.getJob());
    keys = KeyRow.of(context);
    layOut(keys);
  }

  @Override
  public String aside() {
    return model.openings().size() + " to open";
  }

  @Override
  protected void refresh() {
    super.refresh();
    List<KeyRow.Act> acts = new ArrayList<>();
    acts.add(
        act(DebrisModel.words(model.question(), true), () -> open(() -> new MainsScreen(context))));
    if (!model.finds().isEmpty()) {
      acts.add(
          act(
              touch().brief(POINTS, "Why"),
              () -> open(() -> new WordsScreen(context, POINTS, points()))));
    }
    if (model.isToNote()) {
      acts.add(act(touch().brief("Write it down", "Note it"), () -> ask(context, Opening.NOTE)));
    }
    keys.setActs(acts);
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    for (Opening opening : model.openings()) {
      rows.add(row(rows.size() + 1, opening));
    }
    if (rows.isEmpty()) {
      rows.add(told("Nothing more to open", whyNothing()));
    }
    return rows;
  }

  private String whyNothing() {
    if (model.finds().isEmpty()) {
      return "Nothing found yet. Tap the map where debris lies.";
    }
    return model.isToNote()
        ? Opening.NOTE.sentence()
        : "Everything these finds call for is opened and inspected.";
  }

  /** What each find points to, then what was said of it as it was marked. */
  private List<WordsScreen.Paragraph> points() {
    List<WordsScreen.Paragraph> lines = new ArrayList<>();
    for (Clue clue : model.map().suspects()) {
      lines.add(
          new WordsScreen.Paragraph(Words.capital(clue.found()), Words.capital(clue.pointsTo())));
    }
    for (DebrisFind find : model.finds()) {
      String noted = String.join("; ", model.notes(find));
      if (!noted.isEmpty()) {
        lines.add(new WordsScreen.Paragraph("Noted: " + find.words(), Words.sentence(noted)));
      }
    }
    return lines;
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
