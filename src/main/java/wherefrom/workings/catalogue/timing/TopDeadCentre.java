package wherefrom.workings.catalogue.timing;

import java.util.List;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Range;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.maths.WheelAngle;

/** Top dead centre on the degree wheel, midway between two touches of a stop. */
public final class TopDeadCentre implements Working {
  private static final AmountInput BEFORE = reading("before", "turned forward");
  private static final AmountInput AFTER = reading("after", "turned backward");

  private static AmountInput reading(String key, String way) {
    return AmountInput.of(
            key,
            Dimension.ANGLE,
            "Degree wheel with the piston against the stop, crank " + way + ".")
        .in(Range.between("-360", "360"));
  }

  private static final WorkingCard CARD =
      new WorkingCard(
          "top-dead-center",
          "Top dead center with a stop",
          List.of(BEFORE, AFTER),
          "top dead center = midway between before and after, the shorter way around",
          Source.commonPractice(),
          List.of(
              "The same stop, untouched, for both readings; turn by hand, plugs out.",
              "The stop must touch within a quarter turn of the top."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    WheelAngle before = new WheelAngle(terms.get(BEFORE));
    WheelAngle after = new WheelAngle(terms.get(AFTER));
    if (before.isOpposite(after)) {
      return new Nonsense(
          AFTER.key(),
          "The readings are half a turn apart. A dead center is midway on either side."
              + " Set the stop to touch nearer to the top.");
    }
    return Values.of("center", "top dead center on the wheel", Unit.DEGREE, before.midway(after));
  }
}
