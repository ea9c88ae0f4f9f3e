package wherefrom.workings.catalogue.compression;

import java.util.List;
import wherefrom.quantity.Dimension;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Range;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.maths.DualNumber;

/** A piston ring's gap from a rule per bore. */
public final class RingGap implements Working {
  private static final AmountInput PER_BORE =
      AmountInput.of(
              "gap-per-bore",
              Dimension.NUMBER,
              "Gap over bore, as the ring maker says: 0.004 is usual for a cast ring in a street"
                  + " engine, one maker prints 0.0035 at least.")
          .in(Range.above("0", "0.02"));

  private static final WorkingCard CARD =
      new WorkingCard(
          "ring-gap",
          "Ring gap",
          List.of(CombustionSpace.BORE, PER_BORE),
          "gap = bore·gap per bore",
          Source.published(
              "Hastings Service Tips, \"Oversize Cylinders\" (P32), undated: at least 0.0035 in per"
                  + " inch; 0.004 in is common practice"),
          List.of(
              "Printed rules differ. The ring maker's figure for that ring outranks them.",
              "Square the ring in the bore before measuring."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    DualNumber gap = terms.get(CombustionSpace.BORE).times(terms.get(PER_BORE));
    return Values.of("gap", "ring gap", terms.lengthUnit(), gap);
  }
}
