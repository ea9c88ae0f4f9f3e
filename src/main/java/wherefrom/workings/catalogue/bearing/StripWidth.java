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

/** The width to expect of a deformable strip at a given gap. */
public final class StripWidth implements Working {
  private static final AmountInput CLEARANCE =
      AmountInput.length("clearance", "The oil clearance expected.");

  private static final WorkingCard CARD =
      new WorkingCard(
          "strip-width",
          "Width of a deformable strip",
          List.of(StripClearance.STRAND, CLEARANCE),
          "width = π·strand² / (4·clearance)",
          Source.workedOut("constant volume of a round strand pressed flat"),
          List.of("A check only: the real reading uses the scale on the strip's package."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    DualNumber strand = terms.get(StripClearance.STRAND);
    DualNumber width = Geometry.disc(strand).dividedBy(terms.get(CLEARANCE));
    if (width.isLessThan(strand)) {
      return new Nonsense(
          CLEARANCE.key(),
          "At "
              + terms.text(CLEARANCE)
              + " the strip would not be pressed wider than it is: take a thicker strip.");
    }
    return Values.of("width", "width to expect", terms.lengthUnit(), width);
  }
}
