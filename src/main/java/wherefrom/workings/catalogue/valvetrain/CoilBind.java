package wherefrom.workings.catalogue.valvetrain;

import java.util.List;
import java.util.Optional;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.MissingInputs;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.catalogue.basis.Gap;
import wherefrom.workings.maths.DualNumber;

/** The travel left before the spring's coils touch. */
public final class CoilBind implements Working {
  public static final AmountInput INSTALLED =
      AmountInput.length("installed-height", "The height of the spring, valve closed.");
  public static final AmountInput LIFT =
      AmountInput.length("lift", "The lift at the valve.").orZero();
  public static final AmountInput SOLID =
      AmountInput.length("solid-height", "The spring pressed until all coils touch.").optional();
  private static final AmountInput COILS =
      AmountInput.of("coils", Dimension.NUMBER, "All coils, the ground ends counted.").optional();
  private static final AmountInput WIRE =
      AmountInput.length("wire", "The wire's diameter.").optional();

  private static final WorkingCard CARD =
      new WorkingCard(
          "coil-bind",
          "Coil bind margin",
          List.of(INSTALLED, LIFT, SOLID, COILS, WIRE),
          "margin = installed height − solid height − lift; solid height measured, or coils · wire",
          Source.commonPractice(),
          List.of("Coils · wire holds for ground ends. Check inner and outer spring each."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    Optional<DualNumber> solid =
        terms.find(SOLID).or(() -> terms.find(COILS).flatMap(n -> terms.find(WIRE).map(n::times)));
    if (solid.isEmpty()) {
      return new MissingInputs(terms.has(WIRE) ? List.of(COILS) : missing(terms));
    }
    if (!solid.get().isLessThan(terms.get(INSTALLED))) {
      return new Nonsense(
          INSTALLED.key(),
          "The spring cannot be installed at "
              + terms.text(INSTALLED)
              + ": it is solid at that height.");
    }
    DualNumber margin = terms.get(INSTALLED).minus(solid.get()).minus(terms.get(LIFT));
    Unit unit = terms.lengthUnit();
    Values values =
        Values.of("margin", "left before coil bind", unit, margin)
            .and("solid", "solid height", unit, solid.get());
    return Gap.COIL_BIND.withNote(values, margin, unit);
  }

  private static List<wherefrom.workings.InputSpec> missing(Terms terms) {
    return terms.has(COILS) ? List.of(WIRE) : List.of(SOLID);
  }
}
