package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.job.Caution;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.job.numbers.Ring;
import wherefrom.job.numbers.RingFiling;
import wherefrom.job.numbers.RingGapRow;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.TagKey;

/** One ring of one bore: what is wanted, what is, what to file; measured again, then ticked. */
public final class RingScreen extends ListPage {
  private final String where;
  private final Ring ring;
  private final TagKey tag;
  private final KeyRow keys;
  private Optional<RingGapRow> row = Optional.empty();
  private Runnable first = () -> {};

  RingScreen(ScreenContext context, String where, Ring ring) {
    super(context, Words.capital(ring.wordsAt(where)));
    this.where = where;
    this.ring = ring;
    tag = tag(() -> first.run());
    keys = KeyRow.of(context);
    layOut(new Foot(context, tag, keys));
  }

  @Override
  public String aside() {
    return row.map(row -> row.state().words()).orElse("");
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    row.ifPresent(now -> rows.addAll(rows(now)));
    return rows;
  }

  private List<Region> rows(RingGapRow row) {
    List<Region> rows = new ArrayList<>(List.of(told(RingsScreen.brief(row), row.sentence())));
    rows.set(0, told(Words.capital(RingsScreen.brief(row)), row.sentence()));
    rows.add(told("Gap", row.figures()));
    new RingFiling(context.getJob())
        .findWanted(ring)
        .ifPresent(wanted -> rows.add(told("Wanted", wanted.words())));
    rows.add(told("How", RingFiling.HOW));
    rows.add(told("Caution", Caution.SHARP_EDGES.sentence()));
    return rows;
  }

  @Override
  protected void refresh() {
    row = new RingFiling(context.getJob()).find(where, ring);
    super.refresh();
    row.ifPresent(this::offer);
    keys.setActs(acts());
  }

  private List<KeyRow.Act> acts() {
    List<KeyRow.Act> acts = new ArrayList<>();
    acts.add(act("Measure again", () -> read(Feature.RINGS, ring.plan())));
    if (row.filter(now -> now.state() == RingGapRow.State.DONE).isPresent()) {
      acts.add(act("Take the tick off", this::untick));
    }
    return acts;
  }

  private void offer(RingGapRow row) {
    switch (row.state()) {
      case NO_BORE -> next("Measure the bore", () -> read(Feature.BORE, "bore"));
      case TO_MEASURE -> next("Measure the gap", () -> read(Feature.RINGS, ring.plan()));
      case TO_FILE -> next("Filed: measure it again", () -> read(Feature.RINGS, ring.plan()));
      case NEAR, WIDE_ENOUGH -> next("Tick it: done", this::tick);
      case DONE -> next("Back to the card", () -> context.navigator().back());
    }
  }

  private void next(String words, Runnable act) {
    tag.setWords(words, "");
    first = act;
  }

  private void read(Feature feature, String plan) {
    Subject subject = new Subject.AFeature(feature, where);
    String station = feature == Feature.RINGS ? ring.id() : "";
    open(() -> ReadingsScreen.at(context, subject, plan, station));
  }

  private void tick() {
    context.attempt(
        () -> {
          FigureOutcome came = new RingFiling(context.getJob()).tick(where, ring);
          if (came instanceof FigureOutcome.Refused refused) {
            context.say(refused.sentence());
          } else {
            context.navigator().back();
          }
        });
    context.navigator().changed();
  }

  private void untick() {
    context.attempt(() -> new RingFiling(context.getJob()).untick(where, ring));
    context.navigator().changed();
  }
}
