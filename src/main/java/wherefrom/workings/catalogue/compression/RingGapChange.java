package wherefrom.workings.catalogue.compression;

import java.util.List;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.catalogue.basis.Geometry;
import wherefrom.workings.maths.DualNumber;

/** How much a ring's gap opens when the bore grows: π times as much. */
public final class RingGapChange implements Working {
  private static final AmountInput GROWTH =
      AmountInput.length("bore-change", "How much larger the bore is; negative if smaller.")
          .signed();

  private static final WorkingCard CARD =
      new WorkingCard(
          "ring-gap-change",
          "Ring gap when the bore grows",
          List.of(GROWTH),
          "change of gap = π·change of bore",
          Source.published("TM 5-3805-260-24, 1-24: 0.003 in of gap per 0.001 in of bore"),
          List.of("The ring itself is taken as unworn."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    DualNumber change = Geometry.PI.times(terms.get(GROWTH));
    return Values.of("change", "change of ring gap", terms.lengthUnit(), change);
  }
}
