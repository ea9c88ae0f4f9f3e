package wherefrom.job.entry;

import java.util.Locale;
import wherefrom.quantity.Dimension;

/** What is read while the engine runs in. */
public enum RunInGauge {
  OIL_PRESSURE("oil pressure", Dimension.STRESS),
  COOLANT("coolant", Dimension.TEMPERATURE);

  private final String words;
  private final Dimension dimension;

  RunInGauge(String words, Dimension dimension) {
    this.words = words;
    this.dimension = dimension;
  }

  /** As files and the command line name it. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public String words() {
    return words;
  }

  public Dimension dimension() {
    return dimension;
  }
}
