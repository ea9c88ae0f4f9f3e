package wherefrom.job.takeapart;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import wherefrom.engine.Bank;
import wherefrom.engine.Spot;
import wherefrom.job.EngineJob;
import wherefrom.job.LoggedEntry;
import wherefrom.job.PartRecord;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigPartOrder;
import wherefrom.job.entry.PartOut;
import wherefrom.parts.Place;

/**
 * The part that is proposed to come out next. It follows the person: after a part, what lies in the
 * same cylinder comes first, then its neighbours as the order says; what another part holds waits
 * for that part.
 */
public final class NextOut {
  private final EngineJob state;
  private final OutOrder order;
  private final Set<Integer> later;

  /**
   * @param later the items that the person leaves for later: they come when nothing else is left
   */
  public NextOut(EngineJob state, OutOrder order, Set<Integer> later) {
    this.state = state;
    this.order = order;
    this.later = Set.copyOf(later);
  }

  /** The next part; empty when all are out. */
  public Optional<PartRecord> find() {
    List<PartRecord> inside = TakeApart.listInside(state);
    OffFirst off = new OffFirst(state);
    Predicate<Place> held = new BigPartOrder(state, BagBook.of(state)).underHeld();
    Comparator<PartRecord> first =
        Comparator.<PartRecord, Boolean>comparing(part -> held.test(part.part().home()))
            .thenComparing(part -> later.contains(item(part)));
    Comparator<PartRecord> turn =
        findLast().map(this::after).map(first::thenComparing).orElse(first);
    Comparator<PartRecord> begun =
        findLast().isEmpty() && order == OutOrder.KIND ? first.thenComparing(byKind()) : turn;
    return inside.stream().filter(part -> off.over(part.part().home()).isEmpty()).min(begun);
  }

  private static int item(PartRecord part) {
    return part.part().item();
  }

  /** In the order in which kinds stand in their list. */
  private static Comparator<PartRecord> byKind() {
    return Comparator.comparing(part -> part.part().home().kind());
  }

  /** Where the part came out of that was taken out last. */
  private Optional<Place> findLast() {
    List<LoggedEntry> standing = state.standing();
    for (int at = standing.size() - 1; at >= 0; at--) {
      if (standing.get(at).entry() instanceof PartOut out) {
        return state.findPart(out.item()).map(part -> part.part().home());
      }
    }
    return Optional.empty();
  }

  /** Parts that tie stand in the order of the places. */
  private Comparator<PartRecord> after(Place last) {
    Comparator<PartRecord> sameStage =
        by(place -> place.kind().stage() == last.kind().stage() ? 0 : 1);
    Comparator<PartRecord> stages = sameStage.thenComparing(by(place -> place.kind().stage()));
    Comparator<PartRecord> cylinders =
        by(place -> wait(place, last))
            .thenComparing(by(place -> place.spot().equals(last.spot()) ? 0 : 1));
    return switch (order) {
      case CYLINDER -> stages.thenComparing(cylinders);
      case BANK -> stages.thenComparing(by(place -> bank(place, last))).thenComparing(cylinders);
      case KIND ->
          by(place -> place.kind() == last.kind() ? 0 : 1)
              .thenComparing(stages)
              .thenComparing(byKind())
              .thenComparing(by(place -> bank(place, last)))
              .thenComparing(cylinders);
    };
  }

  private static Comparator<PartRecord> by(ToIntFunction<Place> figure) {
    return Comparator.comparingInt(part -> figure.applyAsInt(part.part().home()));
  }

  private int bank(Place place, Place last) {
    return bankOf(place.spot()).equals(bankOf(last.spot())) ? 0 : 1;
  }

  /** The bank over a spot; empty for what has none, such as a main. */
  private Optional<Bank> bankOf(Spot spot) {
    return spot.findCylinder().flatMap(state.layout()::findBank);
  }

  private static boolean isOfCylinder(Place place) {
    return place.spot().findCylinder().isPresent();
  }

  /**
   * How far round from the last one: 0 for the same cylinder, then on by their numbers. Another
   * bank is begun at its front.
   */
  private int wait(Place place, Place last) {
    boolean elsewhere = order != OutOrder.CYLINDER && bank(place, last) == 1;
    boolean other = isOfCylinder(place) != isOfCylinder(last);
    int from = elsewhere || other ? 1 : last.spot().number();
    int away = place.spot().number() - from;
    return away >= 0 ? away : away + Byte.MAX_VALUE;
  }
}
