package wherefrom.job.entry;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Why the engine was stopped. */
public enum RunInEnd {
  TIME_UP("the time is up", false, ""),
  SMOKE_OR_FIRE(
      "smoke or fire", true, "Ignition and fuel off. Find what burned before it turns again."),
  NO_OIL_PRESSURE(
      "oil pressure low or gone", true, "Check level and gauge, pump and pickup. Prime it again."),
  NOISE("a noise", true, "Never start it again to listen. Check lash, oil, bearings."),
  TOO_HOT("too hot", true, "Let it cool, cap on. Then check level, trapped air, timing."),
  FUEL_LEAK("a fuel leak", true, "Fuel and battery off. Air it, mend it, wipe it dry."),
  OIL_LEAK("an oil leak", true, "Mend it, wipe it dry, fill up to the mark."),
  COOLANT_LEAK("a coolant leak", true, "Let it cool, cap on. Mend it, fill and bleed."),
  WILL_NOT_HOLD_SPEED(
      "it would not hold its speed", true, "Check timing, fuel and air leaks with the engine off."),
  OTHER("another reason", false, "");

  private final String words;
  private final boolean fault;
  private final String first;

  RunInEnd(String words, boolean fault, String first) {
    this.words = words;
    this.fault = fault;
    this.first = first;
  }

  /** As files and the command line name it. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public String words() {
    return words;
  }

  /**
   * What to see to before it runs again (common practice, no source); empty where it is no fault.
   */
  public String first() {
    return first;
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
