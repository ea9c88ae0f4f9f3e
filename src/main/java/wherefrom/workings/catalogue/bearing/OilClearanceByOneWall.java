package wherefrom.workings.catalogue.bearing;

import java.util.List;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Terms;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;

/** Oil clearance with one wall reading for both shells of a pair. */
public final class OilClearanceByOneWall implements Working {
  private static final AmountInput WALL =
      AmountInput.length("wall", "One shell's wall at its crown, taken for both.");

  private static final WorkingCard CARD =
      new WorkingCard(
          "oil-clearance-one-wall",
          "Oil clearance from three readings",
          List.of(OilClearance.HOUSING, WALL, Clearances.JOURNAL),
          "clearance = housing − 2·wall − journal",
          Clearances.SOURCE,
          List.of(
              "Takes both shells as alike: an error in the one wall counts twice.",
              "The limits are the engine's own."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    return Clearances.answer(
        terms, terms.get(OilClearance.HOUSING).minus(terms.get(WALL).times(2)));
  }
}
