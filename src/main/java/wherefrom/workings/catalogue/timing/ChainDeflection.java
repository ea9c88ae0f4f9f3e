package wherefrom.workings.catalogue.timing;

import java.util.List;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.maths.DualNumber;

/** The whole play of the timing chain at mid-span. */
public final class ChainDeflection implements Working {
  private static final AmountInput INWARD =
      AmountInput.length("inward", "Dial reading with the slack side pushed in.").signed();
  private static final AmountInput OUTWARD =
      AmountInput.length("outward", "Dial reading with the slack side pulled out, same zero.")
          .signed();

  private static final WorkingCard CARD =
      new WorkingCard(
          "chain-deflection",
          "Deflection of the timing chain",
          List.of(INWARD, OUTWARD),
          "deflection = |outward − inward|",
          Source.published("TM 9-2815-237-34, 2-28 (0.810 in in all for that engine)"),
          List.of("The limit is the engine's own. The printed one is another engine's."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    DualNumber total = terms.get(OUTWARD).minus(terms.get(INWARD)).abs();
    return Values.of("deflection", "deflection in all", terms.lengthUnit(), total);
  }
}
