package wherefrom.job.numbers;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import wherefrom.workings.InputSpec;
import wherefrom.workings.plan.PlanInputs;

/** The plan's figures in the groups in which they are measured. */
public enum PlanGroup {
  CYLINDER(
      "Cylinder",
      "bore stroke chamber gasket-bore gasket-thickness deck piston-volume "
          + "opening crevice-height crevice-gap"),
  CUTS("Ratio and cuts", "target head-cut deck-cut bank-angle face-angle"),
  LIFT(
      "Cam and lift",
      "lobe-lift rocker-ratio lash installed-height solid-height seal-gap " + "slot-room"),
  VALVES(
      "Pushrod and valves",
      "pushrod-tilt base-radius-loss tip-rise clearance-intake "
          + "clearance-exhaust valve-tilt crown seat-sink");

  /** Only a what-if has these: they say what would be done. */
  private static final Set<String> CHANGES =
      Set.of("target", "head-cut", "deck-cut", "base-radius-loss", "tip-rise", "seat-sink");

  private final String words;
  private final String keys;

  PlanGroup(String words, String keys) {
    this.words = words;
    this.keys = keys;
  }

  public String words() {
    return words;
  }

  /** The inputs of a column: column 0 is how things are now. */
  public List<InputSpec> inputs(int column) {
    return Stream.of(keys.split(" ", -1))
        .filter(key -> column > 0 || !isChange(key))
        .flatMap(key -> PlanInputs.all().stream().filter(input -> input.key().equals(key)))
        .toList();
  }

  /** Whether the figure says what would be done rather than how something is. */
  public static boolean isChange(String key) {
    return CHANGES.contains(key);
  }
}
