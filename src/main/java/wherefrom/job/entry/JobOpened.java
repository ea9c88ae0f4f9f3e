package wherefrom.job.entry;

import java.util.List;
import java.util.Set;
import wherefrom.engine.Layout;
import wherefrom.engine.LifterType;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;
import wherefrom.parts.FirstNumbering;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;
import wherefrom.quantity.UnitSystem;

/**
 * A job begins. The engine number tells its tags from every other job's.
 *
 * @param items what its part tags stand for: the place of item 1 first; empty in the first
 *     logbooks, which went by {@link FirstNumbering}
 * @param cards what its place cards stand for: the spot of card 1 first; empty as the items are
 */
public record JobOpened(
    String name,
    int engine,
    Layout layout,
    Set<PartKind> kinds,
    UnitSystem units,
    List<Place> items,
    List<Spot> cards)
    implements JobEntry {
  /** A name of more letters is cut: it would fill every screen and tag. */
  public static final int MOST_LETTERS = 80;

  public JobOpened {
    name = cut(name);
    kinds = Set.copyOf(kinds);
    items = List.copyOf(items);
    cards = List.copyOf(cards);
  }

  /** A new job, its numbers given out in the order of taking apart. */
  public static JobOpened of(
      String name, int engine, Layout layout, Set<PartKind> kinds, UnitSystem units) {
    return new JobOpened(
        name, engine, layout, kinds, units, Places.of(layout, kinds), Spots.all(layout));
  }

  /** The same job as its engine's next life begins: with these kinds and lifters. */
  public JobOpened again(Set<PartKind> tracked, LifterType lifters) {
    return new JobOpened(
        name, engine, layout.with(lifters), tracked, units, items, numberedCards());
  }

  /** The places by item number, whoever wrote the logbook. */
  public List<Place> numberedItems() {
    return items.isEmpty() ? FirstNumbering.items(layout, kinds) : items;
  }

  /** The spots by the number of their place card, whoever wrote the logbook. */
  public List<Spot> numberedCards() {
    return cards.isEmpty() ? FirstNumbering.cards(layout) : cards;
  }

  private static String cut(String name) {
    boolean fits = name.codePointCount(0, name.length()) <= MOST_LETTERS;
    return fits ? name : name.substring(0, name.offsetByCodePoints(0, MOST_LETTERS - 1)) + "…";
  }

  @Override
  public boolean canBeTakenBack() {
    return false;
  }
}
