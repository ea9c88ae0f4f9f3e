package wherefrom.workings.catalogue;

import java.util.List;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Range;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;

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
          "top-dead-centre",
          "Top dead centre by a stop",
          List.of(BEFORE, AFTER),
          "top dead centre = (before + after) / 2",
          Source.commonPractice(),
          List.of("The same stop, untouched, for both readings; turn by hand, plugs out."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    return Values.of(
        "centre",
        "top dead centre on the wheel",
        Unit.DEGREE,
        terms.get(BEFORE).plus(terms.get(AFTER)).times(0.5));
  }
}
