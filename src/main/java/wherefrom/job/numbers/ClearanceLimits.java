package wherefrom.job.numbers;

import java.util.Optional;
import wherefrom.job.OpenJob;
import wherefrom.quantity.Amount;
import wherefrom.quantity.AmountReading;
import wherefrom.quantity.AmountText;

/**
 * The limits of an oil clearance, typed in from the engine's service information.
 *
 * @param source manual and page; empty where nobody typed it
 */
public record ClearanceLimits(Optional<Amount> lower, Optional<Amount> upper, String source) {

  /**
   * Those of a kind of bearing.
   *
   * @param bearing {@code main} or {@code rod}
   */
  public static ClearanceLimits of(OpenJob job, String bearing) {
    Sheet sheet = new Sheets(job).find(key(bearing)).orElse(Sheet.empty(""));
    return new ClearanceLimits(
        amount(sheet, "lower"), amount(sheet, "upper"), sheet.figures().getOrDefault("source", ""));
  }

  /** Keeps one of {@code lower}, {@code upper} and {@code source}; an empty text takes it out. */
  public static Kept set(OpenJob job, String bearing, String what, String text) {
    if (!what.equals("source")
        && !text.isEmpty()
        && AmountText.read(text) instanceof AmountReading.NotUnderstood not) {
      return new Kept.Refused(not.sentence());
    }
    Sheets sheets = new Sheets(job);
    Sheet sheet =
        sheets.find(key(bearing)).orElse(Sheet.empty("limits of " + bearing + " clearance"));
    sheets.keep(key(bearing), sheet.with(what, text));
    return new Kept.Done();
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
