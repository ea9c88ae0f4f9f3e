package wherefrom.workings.catalogue.bearing;

import java.util.List;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Terms;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;

/** Oil clearance from the diameter inside the fitted shells. */
public final class OilClearanceByBore implements Working {
  private static final AmountInput INSIDE =
      AmountInput.length("inside", "Inside the shells, fitted and torqued, across the crown.");

  private static final WorkingCard CARD =
      new WorkingCard(
          "oil-clearance-bore",
          "Oil clearance from two readings",
          List.of(INSIDE, Clearances.JOURNAL),
          "clearance = inside − journal",
          Clearances.SOURCE,
          List.of(
              "A bore gauge set with the same micrometer that measures the journal cancels"
                  + " the micrometer's own error. Leave that part out of both uncertainties.",
              "The limits are the engine's own."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    return Clearances.answer(terms, terms.get(INSIDE));
  }
}
