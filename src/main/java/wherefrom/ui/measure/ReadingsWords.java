package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.layout.Region;
import wherefrom.inspection.measure.Station;
import wherefrom.rules.Cue;
import wherefrom.text.Words;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.WordsScreen;
import wherefrom.ui.controls.Either;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.VerdictCard;

/** What is said beside the pad, and what is asked of a figure that was typed. */
final class ReadingsWords {
  /** So many letters have room beside the pad on any glass. */
  private static final int MOST_SAID = 75;

  private static final String ASK = "Is that right?";

  private final ScreenContext context;
  private final ReadingsModel model;

  ReadingsWords(ScreenContext context, ReadingsModel model) {
    this.context = context;
    this.model = model;
  }

  /**
   * A question that stands, over the whole room: as a card where it has room so, else in small
   * letters under its heading, else alone.
   *
   * @param brief the same in few words
   */
  Region asked(String sentence, String brief) {
    Touch touch = context.touch();
    VerdictCard card = new VerdictCard(touch);
    card.show(Cue.ASK, ASK, List.of(), sentence);
    Region words = Panes.column(context.scale(), touch.heading(ASK), touch.small(sentence));
    Region least = Panes.column(context.scale(), Panes.grow(touch.small(brief)));
    return new Either(
            room ->
                List.of(card, words).stream()
                    .filter(one -> one.minWidth(-1) <= room.width())
                    .filter(one -> one.minHeight(room.width()) <= room.height())
                    .findFirst()
                    .orElse(least))
        .needing(least);
  }

  /** Where to measure, how, and what was read there so far; as much of it as there is room for. */
  Region told(Station station) {
    Touch touch = context.touch();
    List<FitText> lines = new ArrayList<>();
    if (model.zero().isEmpty()) {
      lines.add(touch.small("Zero not checked: check it first."));
    }
    if (!touch.isLarge() && !model.plan().how().isEmpty()) {
      Words.sentences(model.plan().how()).forEach(one -> lines.add(touch.small(one)));
    }
    String before = model.read(station);
    if (!before.isEmpty()) {
      lines.add(touch.small("So far here: " + before));
    }
    Stream<String> spot = Stream.of(station.words(), ReadingTitle.spot(station));
    Stream<String> told = isOnly() && touch.isLarge() ? Stream.concat(spot, Stream.of("")) : spot;
    List<FitText> headings = told.map(touch::heading).toList();
    return new SaidAsFits(context.scale(), headings, lines);
  }

  /** The title tells what is read where there is one spot alone. */
  private boolean isOnly() {
    return model.plan().stations().size() == 1;
  }

  /** Whether all of it may have no room beside the pad, so that a key must lead to it. */
  boolean isLong(Station station) {
    String how = model.plan().how();
    boolean more = station.words().length() + how.length() > MOST_SAID;
    boolean parted =
        isOnly() || !how.isEmpty() || !ReadingTitle.spot(station).equals(station.words());
    boolean largest = context.scale().textFactor() >= 2;
    return largest || (parted && (context.touch().isLarge() || more));
  }

  /** Where to measure and how, to be read on a screen of its own. */
  void readOn(Station station) {
    List<WordsScreen.Paragraph> lines = new ArrayList<>();
    lines.add(new WordsScreen.Paragraph("Where", station.words()));
    if (!model.plan().how().isEmpty()) {
      lines.add(new WordsScreen.Paragraph("How", model.plan().how()));
    }
    context.navigator().open(() -> new WordsScreen(context, model.name(), lines));
  }
}
