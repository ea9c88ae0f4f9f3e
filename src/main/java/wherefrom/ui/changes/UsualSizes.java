package wherefrom.ui.changes;

import java.util.ArrayList;
import java.util.List;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.size.CutSurface;

/** Sizes that changes usually come in (common practice, no source); any other can be typed. */
final class UsualSizes {
  /** Stands for a figure that is typed. */
  static final String OTHER = "?";

  private UsualSizes() {}

  /** The choices, {@link #OTHER} last; empty where a change has no size. */
  static List<String> steps(ChangeKind kind, boolean inch) {
    Unit unit = inch ? Unit.INCH : Unit.MILLIMETRE;
    List<String> steps = new ArrayList<>();
    CutSurface.find(kind)
        .ifPresent(
            surface -> surface.steps().list(unit).forEach(step -> steps.add(surface.words(step))));
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

  /** What stands behind a figure that is typed. */
  static String suffix(ChangeKind kind) {
    return CutSurface.find(kind)
        .map(surface -> surface.wearsSmaller() ? " under" : " over")
        .orElse("");
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
