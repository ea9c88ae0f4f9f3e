package wherefrom.job.timing;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import wherefrom.quantity.Dimension;

/** What must be known before readings mean anything; none of it is taken for granted. */
public enum TimingSetting {
  STATED_LIFT(Dimension.LENGTH, "Lift at which the events count, as the card states it"),
  WHEEL(Dimension.ANGLE, "The wheel is read to within, either way"),
  DIAL(Dimension.LENGTH, "The dial is right to within, either way"),
  ZERO(Dimension.ANGLE, "The wheel's zero at top dead centre is right to within, either way");

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

  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static Optional<TimingSetting> find(String key) {
    return Arrays.stream(values()).filter(setting -> setting.key().equals(key)).findFirst();
  }
}
