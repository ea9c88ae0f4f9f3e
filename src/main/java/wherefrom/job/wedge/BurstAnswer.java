package wherefrom.job.wedge;

import java.util.function.Function;
import wherefrom.parts.TagCode;

/**
 * What some typed characters were. The {@link #typed} texts of all answers, one after the other,
 * are what came in, so that nothing is lost: whoever let the characters through to a text field can
 * take back exactly those of a scan.
 */
public sealed interface BurstAnswer {

  /** What the function for its kind makes of it. */
  default <R> R match(
      Function<Scan, R> scan,
      Function<BadCheck, R> badCheck,
      Function<Foreign, R> foreign,
      Function<Taught, R> taught,
      Function<Typing, R> typing) {
    if (this instanceof Scan one) {
      return scan.apply(one);
    }
    if (this instanceof BadCheck one) {
      return badCheck.apply(one);
    }
    if (this instanceof Foreign one) {
      return foreign.apply(one);
    }
    if (this instanceof Taught one) {
      return taught.apply(one);
    }
    return typing.apply((Typing) this);
  }

  /** The characters this answer stands for, as they came, with the Enter or Tab after them. */
  String typed();

  /** One of our tags: sixteen digits whose check digits agree. */
  record Scan(TagCode code, String typed) implements BurstAnswer {}

  /**
   * Most likely a tag of ours with a damaged, lost or doubled character: scan it again.
   *
   * @param digits what was understood, 14 to 32 digits
   */
  record BadCheck(String digits, String typed) implements BurstAnswer {}

  /**
   * A scan that is not one of our tags. A text field should keep it: a person may have typed while
   * the program was busy, and a scanner cannot be told from that by time alone.
   */
  record Foreign(String text, String typed) implements BurstAnswer {}

  /** The set-up card was read; the set-up to keep and to hand to {@link BurstDecoder#use}. */
  record Taught(ScannerSetup setup, String typed) implements BurstAnswer {}

  /** Typed by a person: leave it to the field, with its Enter. */
  record Typing(String typed) implements BurstAnswer {}
}
