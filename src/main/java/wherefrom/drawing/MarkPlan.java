package wherefrom.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import wherefrom.parts.Place;

/**
 * Which marks a drawing bears. On the engine there is one tag for a place that is out, not one for
 * each part, and only the exceptions have a mark; where two would touch, the graver stands.
 */
public final class MarkPlan {
  private static final List<Sign> GRAVE =
      List.of(
          Sign.OTHER,
          Sign.FAILED,
          Sign.AGAINST,
          Sign.SUSPECT,
          Sign.MISSING,
          Sign.AT_SHOP,
          Sign.WASHING,
          Sign.NEW,
          Sign.OPEN,
          Sign.EMPTY);

  private final Anchor anchor;
  private final List<Anchor.Held> meant;
  private final Function<Place, PartState> states;
  private final Set<Place> here;
  private final Glass glass;

  private MarkPlan(
      Anchor anchor, Asked asked, Function<Place, PartState> states, Set<Place> here, Glass glass) {
    this.anchor = anchor;
    this.states = states;
    this.here = here;
    this.glass = glass;
    this.meant =
        anchor.held().stream()
            .filter(held -> asked.isMeant(held.place().kind()))
            .filter(held -> !here.contains(held.place()))
            .toList();
  }

  /**
   * The marks at an anchor.
   *
   * @param here the places that are pointed at; they bear no mark
   */
  public static List<PlacedMark> of(
      Anchor anchor, Asked asked, Function<Place, PartState> states, Set<Place> here, Glass glass) {
    MarkPlan plan = new MarkPlan(anchor, asked, states, here, glass);
    return anchor.all() ? plan.all() : plan.exceptions();
  }

  /** Of what went with its head, the head bears the mark. */
  private boolean isOwn(Anchor.Held held) {
    return !EngineStates.wentWithCarrier(states, held.place());
  }

  private Sign sign(Anchor.Held held) {
    return states.apply(held.place()).sign();
  }

  private PlacedMark mark(Anchor.Held held) {
    return MarkShapes.of(sign(held), held.mark(), anchor.mark(), glass);
  }

  private List<PlacedMark> all() {
    return meant.stream().map(this::mark).toList();
  }

  private List<PlacedMark> exceptions() {
    List<PlacedMark> marks = new ArrayList<>();
    meant.stream()
        .filter(held -> sign(held).isException() && isOwn(held))
        .sorted(Comparator.comparingInt(held -> GRAVE.indexOf(sign(held))))
        .map(this::mark)
        .filter(mark -> isFree(mark, marks))
        .forEach(marks::add);
    findTag().filter(tag -> isFree(tag, marks)).ifPresent(marks::add);
    return marks;
  }

  private static boolean isFree(PlacedMark mark, List<PlacedMark> others) {
    return others.stream()
        .noneMatch(
            other -> {
              double least = 0.47 * (mark.side() + other.side());
              return Math.abs(mark.at().x() - other.at().x()) < least
                  && Math.abs(mark.at().y() - other.at().y()) < least;
            });
  }

  private boolean isOut(Anchor.Held held) {
    return !here.contains(held.place())
        && meant.contains(held)
        && sign(held) == Sign.OUT
        && isOwn(held);
  }

  private Optional<PlacedMark> findTag() {
    List<Anchor.Held> out = anchor.held().stream().filter(this::isOut).toList();
    if (out.isEmpty()) {
      return Optional.empty();
    }
    boolean both =
        out.size() > 1
            && out.get(0).equals(anchor.held().get(0))
            && out.get(1).equals(anchor.held().get(1));
    boolean covers = covers(out.get(0).tag());
    Point at = both || covers ? anchor.shared() : out.get(0).tag();
    return Optional.of(MarkShapes.tag(at, anchor.tag(), glass));
  }

  /** Whether a tag there would cover what is pointed at. */
  private boolean covers(Point tag) {
    return anchor.held().stream()
        .filter(held -> here.contains(held.place()))
        .map(Anchor.Held::tag)
        .anyMatch(at -> Math.hypot(at.x() - tag.x(), at.y() - tag.y()) < anchor.tag());
  }
}
