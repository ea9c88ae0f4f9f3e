package wherefrom.job.timing;

import java.util.Locale;
import wherefrom.quantity.Dimension;

/** What must be known before readings mean anything; none of it is taken for granted. */
public enum TimingSetting {
  STATED_LIFT(Dimension.LENGTH, "Checking lift (from the cam card)"),
  WHEEL(Dimension.ANGLE, "Wheel reading error (±)"),
  DIAL(Dimension.LENGTH, "Dial error (±)"),
  ZERO(Dimension.ANGLE, "Error of the wheel's zero at top dead center (±)");

  private final Dimension dimension;
  private final String words;

  TimingSetting(Dimension dimension, String words) {
    this.dimension = dimension;
    this.words = words;
  }

  public Dimension dimension() {
    return dimension;
  }

  public String words() {
    return words;
  }

  /** Without what stands in brackets: {@code Checking lift}. */
  public String brief() {
    return words.replaceFirst(" \\(.*\\)$", "");
  }

  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
