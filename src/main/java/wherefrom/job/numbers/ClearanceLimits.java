package wherefrom.job.numbers;

import java.util.Optional;
import wherefrom.inspection.measure.Limit;
import wherefrom.job.OpenJob;
import wherefrom.job.measure.Instruments;
import wherefrom.quantity.Amount;
import wherefrom.quantity.AmountReading;
import wherefrom.quantity.AmountText;

/**
 * The limits of an oil clearance, typed in from the engine's service information.
 *
 * @param source manual and page; empty where nobody typed it
 */
public record ClearanceLimits(Optional<Amount> lower, Optional<Amount> upper, String source) {
  private static final String RESULT = "clearance";

  /**
   * Those of a kind of bearing: what was typed where limits of readings are typed, else what was
   * typed here.
   *
   * @param bearing {@code main} or {@code rod}
   */
  public static ClearanceLimits of(OpenJob job, String bearing) {
    return job.state()
        .measures()
        .findLimit(plan(bearing), RESULT)
        .map(limit -> new ClearanceLimits(limit.lower(), limit.upper(), limit.source()))
        .orElseGet(() -> of(new Sheets(job).find(key(bearing)).orElse(Sheet.empty(""))));
  }

  private static ClearanceLimits of(Sheet sheet) {
    return new ClearanceLimits(
        amount(sheet, "lower"), amount(sheet, "upper"), sheet.figures().getOrDefault("source", ""));
  }

  /**
   * Keeps one of {@code lower}, {@code upper} and {@code source}; an empty text takes it out. As
   * soon as the source is known they also judge the bearings.
   */
  public static Kept set(OpenJob job, String bearing, String what, String text) {
    return job.asOne(() -> keep(job, bearing, what, text), kept -> kept instanceof Kept.Done);
  }

  private static Kept keep(OpenJob job, String bearing, String what, String text) {
    if (!what.equals("source")
        && !text.isEmpty()
        && AmountText.read(text) instanceof AmountReading.NotUnderstood not) {
      return new Kept.Refused(not.sentence());
    }
    Sheet sheet = of(job, bearing).sheet(bearing).with(what, text);
    ClearanceLimits then = of(sheet);
    boolean judging = job.state().measures().findLimit(plan(bearing), RESULT).isPresent();
    boolean limited = then.lower().isPresent() || then.upper().isPresent();
    if (!then.source().isBlank() && (limited || judging)) {
      Instruments.Answer answer =
          new Instruments(job)
              .limit(
                  plan(bearing), RESULT, words(then.lower()), words(then.upper()), then.source());
      if (answer instanceof Instruments.Answer.Refused refused) {
        return new Kept.Refused(refused.sentence());
      }
      new Sheets(job).drop(key(bearing));
      return new Kept.Done();
    }
    if (judging) {
      return new Kept.Refused(
          "These limits judge bearings. Type the manual and page.");
    }
    new Sheets(job).keep(key(bearing), sheet);
    return new Kept.Done();
  }

  /** {@code 0.0010 in to 0.0025 in (manual, page 6-12)}. */
  public String words() {
    if (lower.isEmpty() && upper.isEmpty()) {
      return "none typed";
    }
    String from = source.isBlank() ? "source not typed" : source;
    return new Limit("", RESULT, lower, upper, from).words() + " (" + from + ")";
  }

  private static String words(Optional<Amount> limit) {
    return limit.map(Amount::text).orElse("");
  }

  private Sheet sheet(String bearing) {
    return Sheet.empty("limits of " + bearing + " clearance")
        .with("lower", words(lower))
        .with("upper", words(upper))
        .with("source", source);
  }

  private static String plan(String bearing) {
    return bearing + "-journal";
  }

  private static String key(String bearing) {
    return "clearance-limits-" + bearing;
  }

  private static Optional<Amount> amount(Sheet sheet, String key) {
    return AmountText.read(sheet.figures().getOrDefault(key, ""))
            instanceof AmountReading.Understood understood
        ? Optional.of(understood.amount())
        : Optional.empty();
  }
}
