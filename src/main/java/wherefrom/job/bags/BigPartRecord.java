package wherefrom.job.bags;

import java.util.Optional;
import wherefrom.inspection.Decision;
import wherefrom.parts.BigPart;
import wherefrom.parts.Whereabouts;

/**
 * A big part and what is known of it.
 *
 * @param where where it is now
 * @param marks marks and casting numbers as found; may be empty
 * @param decision what becomes of it
 * @param reason why; may be empty
 */
public record BigPartRecord(
    BigPart part, Whereabouts where, String marks, Optional<Decision> decision, String reason) {

  /** One that nobody has touched. */
  static BigPartRecord of(BigPart part) {
    return new BigPartRecord(part, Whereabouts.IN_ENGINE, "", Optional.empty(), "");
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

  BigPartRecord at(Whereabouts now) {
    return new BigPartRecord(part, now, marks, decision, reason);
  }

  BigPartRecord marked(String found) {
    return new BigPartRecord(part, where, found, decision, reason);
  }

  BigPartRecord decided(Decision made, String why) {
    return new BigPartRecord(part, where, marks, Optional.of(made), why);
  }
}
