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
 */
public record PartRecord(
    Part part,
    Whereabouts where,
    Optional<String> awayTo,
    String note,
    Map<String, Look> looks,
    Optional<Decision> decision,
    List<Remark> remarks) {

  public PartRecord {
    looks = Collections.unmodifiableMap(new LinkedHashMap<>(looks));
    remarks = List.copyOf(remarks);
  }

  static PartRecord of(Part part, Whereabouts where) {
    return new PartRecord(part, where, Optional.empty(), "", Map.of(), Optional.empty(), List.of());
  }

  /** The worst answer of all its checks. */
  public Look worstLook() {
    return looks.values().stream().max(Look::compareTo).orElse(Look.NOT_LOOKED);
  }

  PartRecord with(Part changed) {
    return new PartRecord(changed, where, awayTo, note, looks, decision, remarks);
  }

  PartRecord at(Whereabouts now) {
    return new PartRecord(part, now, Optional.empty(), "", looks, decision, remarks);
  }

  PartRecord at(Whereabouts now, String words) {
    return new PartRecord(part, now, Optional.empty(), words, looks, decision, remarks);
  }

  PartRecord away(Whereabouts now, String to) {
    return new PartRecord(part, now, Optional.of(to), "", looks, decision, remarks);
  }

  PartRecord looked(String check, Look look) {
    Map<String, Look> more = new LinkedHashMap<>(looks);
    more.put(check, look);
    return new PartRecord(part, where, awayTo, note, more, decision, remarks);
  }

  PartRecord decided(Optional<Decision> now) {
    return new PartRecord(part, where, awayTo, note, looks, now, remarks);
  }

  PartRecord remarked(Remark remark) {
    List<Remark> more = new ArrayList<>(remarks);
    more.add(remark);
    return new PartRecord(part, where, awayTo, note, looks, decision, more);
  }
}
