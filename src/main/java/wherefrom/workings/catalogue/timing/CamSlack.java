package wherefrom.workings.catalogue.timing;

import java.util.List;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Note;
import wherefrom.workings.Range;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.maths.DualNumber;
import wherefrom.workings.maths.WheelAngle;

/** How far the crank turns before the cam follows. */
public final class CamSlack implements Working {
  private static final AmountInput FORWARD = reading("forward", "in its running direction");
  private static final AmountInput BACKWARD = reading("backward", "the other way");
  private static final Source LIMIT = Source.fromMemory();

  private static AmountInput reading(String key, String way) {
    return AmountInput.of(
            key,
            Dimension.ANGLE,
            "Degree wheel when the rotor just moves, crank turned " + way + ".")
        .in(Range.between("-360", "360"));
  }

  private static final WorkingCard CARD =
      new WorkingCard(
          "cam-slack",
          "Slack from crank to cam",
          List.of(FORWARD, BACKWARD),
          "slack = |forward − backward| the shorter way around, in crank degrees",
          Source.commonPractice(),
          List.of("Backlash of the rotor's own drive is in it. Read at the cam where you can."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    DualNumber slack =
        new WheelAngle(terms.get(FORWARD)).from(new WheelAngle(terms.get(BACKWARD))).abs();
    return Values.of("slack", "slack in crank degrees", Unit.DEGREE, slack)
        .noteIf(
            DualNumber.of(5).isLessThan(slack),
            () ->
                Note.caution(
                    "slack-large",
                    "More than about 5 to 7 crank degrees. Look at the timing drive.",
                    LIMIT));
  }
}
