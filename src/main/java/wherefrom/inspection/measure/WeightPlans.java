package wherefrom.inspection.measure;

import java.util.List;
import wherefrom.inspection.Sources;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Dimension;

/** What is weighed to be matched: pistons, their pins, rods end for end. */
public final class WeightPlans {
  static final List<ReadingPlan> ROWS =
      List.of(
          weight(
              PartKind.PISTON, "piston-weight", "Piston weight", "Piston, without pin and rings"),
          weight(PartKind.PISTON, "pin-weight", "Pin weight", "Pin, without its locks"),
          weight(
              PartKind.ROD,
              "rod-big-weight",
              "Rod weight, big end",
              "Big end on the scale, small end hung level"),
          weight(
              PartKind.ROD,
              "rod-small-weight",
              "Rod weight, small end",
              "Small end on the scale, big end hung level"));

  private WeightPlans() {}

  /** The plans whose members are matched to the lightest. */
  public static List<ReadingPlan> all() {
    return ROWS;
  }

  private static ReadingPlan weight(PartKind kind, String key, String title, String station) {
    return ReadingPlan.of(kind, key, title, Derivation.VALUE)
        .at(new Station("weight", station, Dimension.MASS))
        .between(10, 5000)
        .source(Sources.PRACTICE);
  }
}
