package wherefrom.job.entry;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Why the engine was stopped. */
public enum RunInEnd {
  TIME_UP("the time is up", false),
  SMOKE_OR_FIRE("smoke or fire", true),
  NO_OIL_PRESSURE("oil pressure low or gone", true),
  NOISE("a noise", true),
  TOO_HOT("too hot", true),
  FUEL_LEAK("a fuel leak", true),
  OIL_LEAK("an oil leak", true),
  COOLANT_LEAK("a coolant leak", true),
  WILL_NOT_HOLD_SPEED("it would not hold its speed", true),
  OTHER("another reason", false);

  private final String words;
  private final boolean fault;

  RunInEnd(String words, boolean fault) {
    this.words = words;
    this.fault = fault;
  }

  /** As files and the command line name it. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public String words() {
    return words;
  }

  /** Whether something is to be put right before it runs again. */
  public boolean isFault() {
    return fault;
  }

  public static Optional<RunInEnd> find(String key) {
    return Arrays.stream(values()).filter(end -> end.key().equals(key)).findFirst();
  }

  /** What ends a run at once, the most urgent first, and any other reason last. */
  public static List<RunInEnd> atOnce() {
    return Arrays.stream(values()).filter(end -> end != TIME_UP).toList();
  }
}
