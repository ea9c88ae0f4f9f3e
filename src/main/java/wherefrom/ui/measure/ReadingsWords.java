package wherefrom.ui.measure;

import java.util.List;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.inspection.measure.Station;
import wherefrom.rules.Cue;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.VerdictCard;

/** What is said beside the pad, and what is asked of a figure that was typed. */
final class ReadingsWords {
  /** So many letters leave room for more to be said beside the pad. */
  private static final int MOST_SAID = 75;

  private final ScreenContext context;
  private final ReadingsModel model;

  ReadingsWords(ScreenContext context, ReadingsModel model) {
    this.context = context;
    this.model = model;
  }

  /** A question that stands, over the whole room. */
  Region asked(String sentence) {
    if (context.touch().isLarge()) {
      return Panes.grow(context.touch().small(sentence));
    }
    VerdictCard card = new VerdictCard(context.touch());
    card.show(Cue.ASK, "Is that right?", List.of(), sentence);
    return card;
  }

  /** Where to measure, how, and what was read there so far. */
  Region told(Station station) {
    VBox told = new VBox(context.scale().px(1));
    told.getChildren().add(context.touch().heading(station.words()));
    if (!context.touch().isLarge() && !model.plan().how().isEmpty()) {
      told.getChildren().add(context.touch().small(model.plan().how()));
    }
    String before = model.read(station);
    if (!before.isEmpty()) {
      told.getChildren().add(context.touch().small("So far here: " + before));
    }
    boolean brief = station.words().length() + model.plan().how().length() <= MOST_SAID;
    if (model.zero().isEmpty() && !context.touch().isLarge() && brief) {
      told.getChildren().add(context.touch().small("Zero not checked: check it first."));
    }
    return told;
  }
}
