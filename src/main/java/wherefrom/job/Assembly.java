package wherefrom.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.entry.SectionClosed;
import wherefrom.parts.Place;
import wherefrom.rules.VerdictName;

/** What is fitted where: the fold over the entries that speak of putting together. */
final class Assembly {
  private static final EntryFold<Assembly> READS =
      EntryFold.<Assembly>none()
          .at(PartFitted.class, Assembly::fit)
          .on(PartUnfitted.class, (seats, unfitted) -> seats.remove(unfitted.item()))
          .on(PartOut.class, (seats, out) -> seats.kept.remove(out.item()))
          .on(PartReplaced.class, (seats, replaced) -> seats.remove(replaced.oldItem()))
          .on(SectionClosed.class, (seats, it) -> seats.closed.add(it.section()));

  private final Map<Place, Integer> fitted = new LinkedHashMap<>();
  private final Map<Integer, Place> fittedAt = new LinkedHashMap<>();
  private final Map<Integer, PartFitted> onPurpose = new LinkedHashMap<>();
  private final Map<Integer, Kept> kept = new LinkedHashMap<>();
  private final Map<Integer, Long> turned = new LinkedHashMap<>();
  private final Map<Place, String> excused = new LinkedHashMap<>();
  private final Set<String> closed = new LinkedHashSet<>();

  Assembly() {}

  /** As another is now; what changes in one of them later does not in the other. */
  Assembly(Assembly other) {
    fitted.putAll(other.fitted);
    fittedAt.putAll(other.fittedAt);
    onPurpose.putAll(other.onPurpose);
    kept.putAll(other.kept);
    turned.putAll(other.turned);
    excused.putAll(other.excused);
    closed.addAll(other.closed);
  }

  Map<Place, Integer> fitted() {
    return Collections.unmodifiableMap(fitted);
  }

  Optional<Place> findFittedAt(int item) {
    return Optional.ofNullable(fittedAt.get(item));
  }

  /** The parts that sit somewhere against a stop, by item. */
  Map<Integer, PartFitted> onPurpose() {
    return Collections.unmodifiableMap(onPurpose);
  }

  /**
   * A reason for a part to sit where it sits, and the entry that gave it.
   *
   * @param later whether it was given while the part sat there, not with the fit itself
   */
  record Kept(String reason, long since, boolean later) {}

  /** Why a part sits where it sits although something stood against it. */
  Optional<Kept> findKept(int item) {
    return Optional.ofNullable(kept.get(item));
  }

  /** Why a part was left where it sits; empty as well where that was said only as it was fitted. */
  Optional<String> findLeftIn(int item) {
    return findKept(item).filter(Kept::later).map(Kept::reason);
  }

  /** The entry that fitted a part turned, knowing it; 0 where none did. */
  long turnedAt(int item) {
    return turned.getOrDefault(item, 0L);
  }

  /** A reason was given for a part to stay where it sits. */
  void keep(int item, String reason, long sequence) {
    kept.put(item, new Kept(reason, sequence, true));
  }

  /** A reason was given for a place to stay empty. */
  void leaveEmpty(Place place, String reason) {
    excused.put(place, reason);
  }

  Map<Place, String> excused() {
    return Collections.unmodifiableMap(excused);
  }

  Set<String> closed() {
    return Collections.unmodifiableSet(closed);
  }

  void apply(LoggedEntry logged) {
    READS.take(this, logged);
  }

  private void fit(PartFitted fit, LoggedEntry logged) {
    long turnedSince = fit.place().equals(fittedAt.get(fit.item())) ? turnedAt(fit.item()) : 0;
    remove(fit.item());
    Integer before = fitted.get(fit.place());
    if (before != null) {
      remove(before);
    }
    fitted.put(fit.place(), fit.item());
    fittedAt.put(fit.item(), fit.place());
    excused.remove(fit.place());
    if (fit.wasOnPurpose()) {
      onPurpose.put(fit.item(), fit);
      kept.put(fit.item(), new Kept(fit.onPurpose(), logged.sequence(), false));
      turn(fit, turnedSince == 0 ? logged.sequence() : turnedSince, turnedSince != 0);
    }
  }

  /** What is left turned for a reason has been so from the first fit on. */
  private void turn(PartFitted fit, long since, boolean before) {
    if (before || fit.against().equals(Optional.of(VerdictName.WRONG_END))) {
      turned.put(fit.item(), since);
    }
  }

  private void remove(int item) {
    Place place = fittedAt.remove(item);
    onPurpose.remove(item);
    kept.remove(item);
    turned.remove(item);
    if (place != null) {
      fitted.remove(place);
    }
  }
}
