package wherefrom.workings.catalogue.bearing;

import java.util.List;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Terms;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;

/** Oil clearance from housing, both shells and journal, each measured. */
public final class OilClearance implements Working {
  static final AmountInput HOUSING =
      AmountInput.length("housing", "The housing's diameter, cap torqued, no shells in.");
  private static final AmountInput UPPER =
      AmountInput.length("upper-wall", "The upper shell's wall at its crown.");
  private static final AmountInput LOWER =
      AmountInput.length("lower-wall", "The lower shell's wall at its crown.");

  private static final WorkingCard CARD =
      new WorkingCard(
          "oil-clearance",
          "Oil clearance from four readings",
          List.of(HOUSING, UPPER, LOWER, Clearances.JOURNAL),
          "clearance = housing − upper wall − lower wall − journal",
          Clearances.SOURCE,
          List.of(
              "Housing torqued, walls at the crown with a ball anvil, away from the parting line.",
              "The limits are the engine's own."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    return Clearances.answer(
        terms, terms.get(HOUSING).minus(terms.get(UPPER)).minus(terms.get(LOWER)));
  }
}
