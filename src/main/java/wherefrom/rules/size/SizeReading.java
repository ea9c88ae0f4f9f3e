package wherefrom.rules.size;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wherefrom.engine.ValveSide;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;

/** Reads the size of goods as it is typed, and as the first logbooks hold it. */
final class SizeReading {
  /** {@code 0.010 in under (ten under), once ground}: figure, sense, and what else was shown. */
  private static final Pattern OFF =
      Pattern.compile("([^,;(]+?)\\s*\\b(under|over)(?:size)?\\s*(?:[,;(].*)?");

  /** {@code standard, once ground}; but not {@code standard, if never ground before}. */
  private static final Pattern STANDARD =
      Pattern.compile("(?:standard|std)(?:, (?:once|as measured).*)?");

  private SizeReading() {}

  static Optional<GoodsSize> read(String text, Unit usual) {
    String typed = text.strip().toLowerCase(Locale.ROOT);
    if (typed.isEmpty()) {
      return Optional.of(GoodsSize.none());
    }
    if (STANDARD.matcher(typed).matches()) {
      return Optional.of(GoodsSize.standard());
    }
    return findSide(typed).or(() -> findOff(typed, usual));
  }

  private static Optional<GoodsSize> findSide(String typed) {
    return Arrays.stream(ValveSide.values())
        .filter(side -> side.name().toLowerCase(Locale.ROOT).equals(typed))
        .findFirst()
        .map(GoodsSize.OfSide::new);
  }

  private static Optional<GoodsSize> findOff(String typed, Unit usual) {
    Matcher off = OFF.matcher(typed);
    if (!off.matches()) {
      return Optional.empty();
    }
    GoodsSize.Sense sense =
        off.group(2).equals("under") ? GoodsSize.Sense.UNDER : GoodsSize.Sense.OVER;
    return SizeText.read(off.group(1), usual)
        .filter(amount -> amount.dimension() == Dimension.LENGTH)
        .map(amount -> GoodsSize.of(sense, amount));
  }
}
