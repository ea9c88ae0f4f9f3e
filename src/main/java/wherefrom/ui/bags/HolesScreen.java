package wherefrom.ui.bags;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.geometry.Point2D;
import wherefrom.job.FigureParser;
import wherefrom.job.bags.Bag;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.Bags;
import wherefrom.job.entry.BoltHole;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;

/** The holes that the bolts of a bag came out of: tapped where they are, each with its length. */
public final class HolesScreen extends Page {
  private static final int MOST = 99;
  private static final int MOST_FIGURES = 8;

  /** Where a hole comes that no finger has shown: so many a row, with room round each. */
  private static final int IN_A_ROW = 6;

  private static final int STEP = 16;
  private static final int FIRST = 10;
  private static final int ROW_STEP = 30;
  private static final int WHOLE = 100;

  private final int number;
  private final HoleMap map;
  private final TagKey tag;
  private int chosen;

  HolesScreen(ScreenContext context, int number) {
    super(context, "Holes of bag " + number);
    this.number = number;
    map = HoleMap.keyed(context.touch(), this::tapped);
    tag = tag(this::press);
    KeyRow keys = KeyRow.of(context, act("All alike", this::alike), act("Take away", this::remove));
    lay(Panes.column(context.scale(), Panes.grow(map), new Foot(context, tag, keys)));
  }

  private List<BoltHole> holes() {
    return BagBook.of(context.state())
        .findBag(number)
        .map(bag -> bag.filled().holes())
        .orElse(List.of());
  }

  @Override
  public String aside() {
    return touch().brief("tap each hole", "");
  }

  @Override
  protected void refresh() {
    if (holes().stream().noneMatch(hole -> hole.hole() == chosen)) {
      chosen = holes().stream().mapToInt(BoltHole::hole).max().orElse(0);
    }
    map.show(holes(), chosen);
    if (chosen == 0) {
      tag.setWords("Tap a hole", touch().brief("or press for the next", ""));
    } else {
      String length = find(chosen).flatMap(BoltHole::length).map(Amount::text).orElse("?");
      tag.setWords(touch().brief("Length of bolt " + chosen, "Bolt " + chosen), length);
    }
  }

  private Optional<BoltHole> find(int hole) {
    return holes().stream().filter(one -> one.hole() == hole).findFirst();
  }

  /** A hole that is there is chosen; anywhere else is a new one. */
  private void tapped(Optional<Point2D> at) {
    Optional<Integer> there = at.flatMap(map::find);
    if (there.isPresent()) {
      chosen = there.get();
      refresh();
      return;
    }
    int next = holes().stream().mapToInt(BoltHole::hole).max().orElse(0) + 1;
    if (next <= MOST) {
      chosen = next;
      add(at.map(point -> at(next, map.across(point), map.down(point))).orElse(usual(next)));
    }
  }

  private static BoltHole at(int hole, int across, int down) {
    return new BoltHole(hole, Optional.of(across), Optional.of(down), Optional.empty());
  }

  private static BoltHole usual(int hole) {
    int column = (hole - 1) % IN_A_ROW;
    int row = (hole - 1) / IN_A_ROW;
    return at(hole, FIRST + column * STEP, Math.min(WHOLE, FIRST + row * ROW_STEP));
  }

  private void add(BoltHole hole) {
    keep(
        holes -> {
          List<BoltHole> all = new ArrayList<>(holes);
          all.add(hole);
          return all;
        });
  }

  private void press() {
    if (chosen > 0) {
      ask("Length of bolt " + chosen, length -> each(hole -> hole.hole() == chosen, length));
    } else {
      tapped(Optional.empty());
    }
  }

  private void alike() {
    ask("Length of all bolts", length -> each(hole -> true, length));
  }

  private void ask(
      String title, java.util.function.Function<Amount, UnaryOperator<List<BoltHole>>> deed) {
    open(
        () ->
            NumberEntryScreen.size(
                context,
                title,
                "Under the head, in "
                    + FigureParser.usual(context.state().units(), Dimension.LENGTH).symbol(),
                MOST_FIGURES,
                typed -> read(typed, deed)));
  }

  private void read(
      String typed, java.util.function.Function<Amount, UnaryOperator<List<BoltHole>>> deed) {
    String sentence =
        FigureParser.read(
            typed,
            context.state().units(),
            Dimension.LENGTH,
            length -> {
              keep(deed.apply(length));
              return "";
            },
            wrong -> wrong);
    if (!sentence.isEmpty()) {
      context.say(sentence);
    }
  }

  private static UnaryOperator<List<BoltHole>> each(
      java.util.function.Predicate<BoltHole> which, Amount length) {
    return holes ->
        holes.stream()
            .map(
                hole ->
                    which.test(hole)
                        ? new BoltHole(hole.hole(), hole.across(), hole.down(), Optional.of(length))
                        : hole)
            .toList();
  }

  private void remove() {
    keep(holes -> holes.stream().filter(hole -> hole.hole() != chosen).toList());
  }

  /** Each tap is an entry, so that UNDO takes one hole back. */
  private void keep(UnaryOperator<List<BoltHole>> change) {
    Optional<Bag> bag = BagBook.of(context.state()).findBag(number);
    bag.ifPresent(
        one ->
            context.attempt(
                () ->
                    new Bags(context.getJob())
                        .mend(BagBits.with(one.filled(), change.apply(one.filled().holes())))));
    context.navigator().changed();
  }
}
