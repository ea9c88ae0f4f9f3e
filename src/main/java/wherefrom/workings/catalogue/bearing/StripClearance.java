package wherefrom.workings.catalogue.bearing;

import java.util.List;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.catalogue.basis.Geometry;
import wherefrom.workings.maths.DualNumber;

/** The gap from the width a deformable strip was pressed to. */
public final class StripClearance implements Working {
  static final AmountInput STRAND =
      AmountInput.length("strand", "The strip's diameter before it is pressed.");
  private static final AmountInput WIDTH =
      AmountInput.length("width", "The strip's width after torquing and opening again.");

  private static final WorkingCard CARD =
      new WorkingCard(
          "strip-clearance",
          "Clearance from a deformable strip",
          List.of(STRAND, WIDTH),
          "gap = π·strand² / (4·width)",
          Source.workedOut("constant volume of a round strand pressed flat"),
          List.of(
              "A check only: the real reading uses the scale on the strip's package.",
              "Never turn the crank on the strip; uneven width shows taper (NAVEDTRA 14050).",
              "It reads one place and cannot see roundness."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    DualNumber width = terms.get(WIDTH);
    if (width.isLessThan(terms.get(STRAND))) {
      return new Nonsense(
          WIDTH.key(), "The pressed width cannot be less than the strip was before pressing.");
    }
    DualNumber gap = Geometry.disc(terms.get(STRAND)).dividedBy(width);
    return Values.of("clearance", "clearance", terms.lengthUnit(), gap);
  }
}
