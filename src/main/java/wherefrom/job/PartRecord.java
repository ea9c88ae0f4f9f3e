package wherefrom.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;

/**
 * All that is known of one part.
 *
 * @param part the part and its tag's issue
 * @param where where it is
 * @param awayTo the basket or the visit it is away to; empty when not away
 * @param note why it is where it is, in words; empty when there is nothing to say
 * @param looks the latest answer to each check
 * @param decision the latest decision
 * @param remarks notes and photographs, oldest first
 * @param dates when things happened to it
 */
public record PartRecord(
    Part part,
    Whereabouts where,
    Optional<String> awayTo,
    String note,
    Map<String, Look> looks,
    Optional<Decision> decision,
    List<Remark> remarks,
    PartDates dates) {

  public PartRecord {
    looks = looks.isEmpty() ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(looks));
    remarks = List.copyOf(remarks);
  }

  static PartRecord of(Part part, Whereabouts where, PartDates dates) {
    return new PartRecord(
        part, where, Optional.empty(), "", Map.of(), Optional.empty(), List.of(), dates);
  }

  /** Whether it is new and was never fitted. */
  public boolean isUnrun() {
    return part.fresh() && dates.firstFitted() == 0;
  }

  /**
   * As the engine's next life begins.
   *
   * @param seat where it sat; empty where it was not in the engine
   */
  PartRecord inNextLife(Optional<Place> seat) {
    Part again =
        seat.map(at -> new Part(part.item(), at, part.issue(), part.pieces(), false)).orElse(part);
    PartDates when =
        seat.isPresent()
            ? PartDates.NEVER
            : new PartDates(dates.takenOn(), dates.firstFitted(), dates.movedAt(), 0, Map.of());
    return new PartRecord(
        again,
        seat.isPresent() ? Whereabouts.IN_ENGINE : where,
        seat.isPresent() ? Optional.empty() : awayTo,
        seat.isPresent() ? "" : note,
        Map.of(),
        Optional.empty(),
        remarks,
        when);
  }

  PartRecord with(Part changed) {
    return new PartRecord(changed, where, awayTo, note, looks, decision, remarks, dates);
  }

  PartRecord at(Whereabouts now, PartDates when) {
    return at(now, "", when);
  }

  PartRecord at(Whereabouts now, String words, PartDates when) {
    return new PartRecord(part, now, Optional.empty(), words, looks, decision, remarks, when);
  }

  PartRecord away(Whereabouts now, String to, PartDates when) {
    return new PartRecord(part, now, Optional.of(to), "", looks, decision, remarks, when);
  }

  PartRecord looked(String check, Look look, long sequence) {
    PartDates when = dates.looked(check, sequence);
    return new PartRecord(part, where, awayTo, note, with(check, look), decision, remarks, when);
  }

  /** The looks with one more; those that stand already are copied once, by the record itself. */
  private Map<String, Look> with(String check, Look look) {
    if (looks.get(check) == look) {
      return looks;
    }
    Map<String, Look> more = new LinkedHashMap<>(looks);
    more.put(check, look);
    return more;
  }

  PartRecord decided(Optional<Decision> now, long sequence) {
    PartDates when = dates.decided(sequence);
    return new PartRecord(part, where, awayTo, note, looks, now, remarks, when);
  }

  PartRecord remarked(Remark remark) {
    List<Remark> more = new ArrayList<>(remarks);
    more.add(remark);
    return new PartRecord(part, where, awayTo, note, looks, decision, more, dates);
  }
}
