package wherefrom.ui.changes;

import java.util.ArrayList;
import java.util.List;
import wherefrom.rules.consequence.ChangeKind;

/** Sizes that changes usually come in (common practice, no source); any other can be typed. */
final class UsualSizes {
  /** Stands for a figure that is typed. */
  static final String OTHER = "?";

  private UsualSizes() {}

  /** The choices, {@link #OTHER} last; empty where a change has no size. */
  static List<String> steps(ChangeKind kind, boolean inch) {
    List<String> steps =
        new ArrayList<>(
            switch (kind) {
              case ROD_JOURNALS_GROUND, MAIN_JOURNALS_GROUND ->
                  inch
                      ? List.of("0.010 in", "0.020 in", "0.030 in")
                      : List.of("0.25 mm", "0.50 mm", "0.75 mm");
              case BORED ->
                  inch
                      ? List.of("0.020 in", "0.030 in", "0.040 in", "0.060 in")
                      : List.of("0.25 mm", "0.50 mm", "0.75 mm", "1.00 mm");
              default -> List.<String>of();
            });
    steps.replaceAll(step -> step + suffix(kind));
    boolean sized =
        switch (kind) {
          case ROD_JOURNALS_GROUND,
              MAIN_JOURNALS_GROUND,
              BORED,
              HEAD_MILLED,
              DECK_MILLED,
              GASKET_THICKNESS,
              LIFT_INCREASED ->
              true;
          default -> false;
        };
    if (sized) {
      steps.add(OTHER);
    }
    return steps;
  }

  static String suffix(ChangeKind kind) {
    return switch (kind) {
      case ROD_JOURNALS_GROUND, MAIN_JOURNALS_GROUND -> " undersize";
      case BORED -> " oversize";
      default -> "";
    };
  }

  static String question(ChangeKind kind) {
    return switch (kind) {
      case GASKET_THICKNESS -> "How thick is the new gasket?";
      case LIFT_INCREASED -> "How much more lift?";
      case HEAD_MILLED, DECK_MILLED -> "How much comes off?";
      default -> "To which size?";
    };
  }
}
