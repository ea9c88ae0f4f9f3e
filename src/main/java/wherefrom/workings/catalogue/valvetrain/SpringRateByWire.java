package wherefrom.workings.catalogue.valvetrain;

import java.util.List;
import wherefrom.quantity.Dimension;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Range;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.maths.DualNumber;

/** A spring's rate from its wire: G·d⁴ / (8·D³·N) with D the mean coil diameter. */
public final class SpringRateByWire implements Working {
  private static final AmountInput WIRE = AmountInput.length("wire", "The wire's diameter.");
  private static final AmountInput OUTSIDE =
      AmountInput.length("outside-diameter", "Over the outside of the coils.");
  private static final AmountInput ACTIVE =
      AmountInput.of(
          "active-coils", Dimension.NUMBER, "Coils that move: with ground ends, all minus two.");
  private static final AmountInput MODULUS =
      AmountInput.of(
              "modulus",
              Dimension.STRESS,
              "Shear modulus of the wire; 11500000psi is usual for spring steel (from memory).")
          .in(Range.above("0", "1000000"));

  private static final WorkingCard CARD =
      new WorkingCard(
          "spring-rate-by-wire",
          "Spring rate from its wire",
          List.of(WIRE, OUTSIDE, ACTIVE, MODULUS),
          "rate = G·wire⁴ / (8·(outside − wire)³·active coils)",
          Source.commonPractice(),
          List.of("For cylindrical springs of round wire with even pitch."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    DualNumber wire = terms.get(WIRE);
    DualNumber mean = terms.get(OUTSIDE).minus(wire);
    if (!wire.isLessThan(mean)) {
      return new Nonsense(
          OUTSIDE.key(), "No coil can be wound so tight. Outside must be over twice the wire.");
    }
    DualNumber above = terms.get(MODULUS).times(wire.squared().squared());
    DualNumber below = mean.squared().times(mean).times(8).times(terms.get(ACTIVE));
    return Values.of(
        "rate", "spring rate", terms.unit(Dimension.SPRING_RATE), above.dividedBy(below));
  }
}
