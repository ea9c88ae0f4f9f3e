package wherefrom.job.bags;

import java.util.Optional;
import wherefrom.inspection.Decision;
import wherefrom.parts.BigPart;
import wherefrom.parts.Whereabouts;

/**
 * A big part and what is known of it.
 *
 * @param where where it is now
 * @param note what was said as it went there, as why it did all the same; may be empty
 * @param marks marks and casting numbers as found; may be empty
 * @param decision what becomes of it; empty as well where it came off again after it was put on
 * @param reason why; may be empty
 * @param before what was decided before it came off again, until it is decided anew
 * @param settled whether it was put on with the decision
 */
public record BigPartRecord(
    BigPart part,
    Whereabouts where,
    String note,
    String marks,
    Optional<Decision> decision,
    String reason,
    Optional<Decision> before,
    boolean settled) {

  /** One that nobody has touched. */
  static BigPartRecord of(BigPart part) {
    return new BigPartRecord(
        part, Whereabouts.IN_ENGINE, "", "", Optional.empty(), "", Optional.empty(), false);
  }

  public int number() {
    return part.number();
  }

  public String words() {
    return part.words();
  }

  /** Whether it is on the engine: never taken off, or on again. */
  public boolean isOn() {
    return where == Whereabouts.IN_ENGINE || where == Whereabouts.FITTED;
  }

  /** Once it was put on, its decision was carried out: off again, it is decided about anew. */
  BigPartRecord at(Whereabouts now, String why) {
    if (settled && now != Whereabouts.FITTED) {
      return new BigPartRecord(part, now, why, marks, Optional.empty(), "", decision, false);
    }
    boolean carriedOut = now == Whereabouts.FITTED && decision.isPresent();
    return new BigPartRecord(part, now, why, marks, decision, reason, before, carriedOut);
  }

  BigPartRecord marked(String found) {
    return new BigPartRecord(part, where, note, found, decision, reason, before, settled);
  }

  BigPartRecord decided(Decision made, String why) {
    return new BigPartRecord(
        part, where, note, marks, Optional.of(made), why, Optional.empty(), false);
  }
}
