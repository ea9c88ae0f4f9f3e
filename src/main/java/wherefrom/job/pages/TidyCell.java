package wherefrom.job.pages;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/**
 * One cell of a table for other programs.
 *
 * @param text what stands there; of a number its plain digits with a point
 * @param isNumber whether it is reckoned with
 */
public record TidyCell(String text, boolean isNumber) {
  /** Nothing is known. */
  public static final TidyCell NONE = new TidyCell("", false);

  private static final MathContext DIGITS = new MathContext(12);
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT).withZone(ZoneOffset.UTC);

  public static TidyCell of(String text) {
    return new TidyCell(text, false);
  }

  public static TidyCell of(long number) {
    return new TidyCell(Long.toString(number), true);
  }

  public static TidyCell of(BigDecimal number) {
    return new TidyCell(number.toPlainString(), true);
  }

  /** To twelve digits: what a working adds beyond them is noise. */
  public static TidyCell of(double number) {
    BigDecimal rounded = BigDecimal.valueOf(number).round(DIGITS).stripTrailingZeros();
    return of(rounded.scale() < 0 ? rounded.setScale(0) : rounded);
  }

  /** The number that is there; nothing where none is. */
  public static TidyCell of(Optional<BigDecimal> number) {
    return number.map(TidyCell::of).orElse(NONE);
  }

  /** {@code yes} or {@code no}. */
  public static TidyCell of(boolean is) {
    return of(is ? "yes" : "no");
  }

  /** A time, UTC, as spreadsheets read it. */
  public static TidyCell of(Instant time) {
    return of(TIME.format(time));
  }

  /** What a JSON document holds for it: a number, a text; null where nothing is known. */
  public Optional<Object> value() {
    if (text.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(isNumber ? new BigDecimal(text) : text);
  }
}
