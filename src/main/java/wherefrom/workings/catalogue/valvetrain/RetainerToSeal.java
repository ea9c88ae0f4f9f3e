package wherefrom.workings.catalogue.valvetrain;

import java.util.List;
import wherefrom.quantity.Unit;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.catalogue.basis.Gap;
import wherefrom.workings.maths.DualNumber;

/** The room left between retainer and stem seal at full lift. */
public final class RetainerToSeal implements Working {
  public static final AmountInput GAP =
      AmountInput.length("seal-gap", "Retainer to seal or guide top, valve closed.");

  private static final WorkingCard CARD =
      new WorkingCard(
          "retainer-to-seal",
          "Retainer to seal",
          List.of(GAP, CoilBind.LIFT),
          "margin = gap − lift",
          Source.commonPractice(),
          List.of("Measure with the seal and the retainer that will be used."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    DualNumber margin = terms.get(GAP).minus(terms.get(CoilBind.LIFT));
    Unit unit = terms.lengthUnit();
    return Gap.RETAINER_TO_SEAL.withNote(
        Values.of("margin", "retainer to seal at full lift", unit, margin), margin, unit);
  }
}
