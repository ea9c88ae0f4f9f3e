package wherefrom.workings.catalogue.bolt;

import java.util.List;
import wherefrom.quantity.Dimension;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.maths.DualNumber;

/** How far an angle stage moves the bolt along its thread. */
public final class AngleStage implements Working {
  private static final AmountInput PITCH =
      AmountInput.length("pitch", "From thread to thread; one inch over the threads per inch.");
  private static final AmountInput ANGLE =
      AmountInput.of("angle", Dimension.ANGLE, "The turn after the torque stage.");

  private static final WorkingCard CARD =
      new WorkingCard(
          "angle-stage",
          "Travel of an angle stage",
          List.of(PITCH, ANGLE),
          "travel = pitch·angle / 360°",
          Source.workedOut("the thread's lead"),
          List.of(
              "The most the bolt can stretch. Part of the travel squeezes gasket and casting.",
              "The preload gained depends on bolt and joint and is not known here."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    DualNumber turns = terms.get(ANGLE).dividedBy(DualNumber.of(360));
    return Values.of(
        "travel", "travel along the thread", terms.lengthUnit(), turns.times(terms.get(PITCH)));
  }
}
