package wherefrom.workings.catalogue.compression;

import static wherefrom.workings.catalogue.compression.CombustionSpace.BORE;
import static wherefrom.workings.catalogue.compression.CombustionSpace.STROKE;

import java.util.List;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Range;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.catalogue.basis.Geometry;
import wherefrom.workings.catalogue.basis.WorkingSources;
import wherefrom.workings.maths.DualNumber;

/** The volume one piston sweeps, and all of them together. */
public final class SweptVolume implements Working {
  static final AmountInput CYLINDERS =
      AmountInput.of("cylinders", Dimension.COUNT, "How many cylinders the engine has.")
          .in(Range.between("1", "64"));

  private static final WorkingCard CARD =
      new WorkingCard(
          "swept-volume",
          "Swept volume",
          List.of(BORE, STROKE, CYLINDERS),
          "V = π·bore²·stroke / 4, times the cylinders",
          WorkingSources.CYLINDER_VOLUME,
          List.of("Takes every cylinder to have the same bore."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    DualNumber one = Geometry.cylinder(terms.get(BORE), terms.get(STROKE));
    DualNumber all = one.times(terms.get(CYLINDERS));
    boolean inch = terms.lengthUnit() == Unit.INCH;
    Unit unit = inch ? Unit.CUBIC_INCH : Unit.CUBIC_CENTIMETRE;
    return Values.of("cylinder", "swept volume of one cylinder", unit, one)
        .and("engine", "swept volume of the engine", unit, all);
  }
}
