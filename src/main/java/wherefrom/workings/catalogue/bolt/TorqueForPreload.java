package wherefrom.workings.catalogue.bolt;

import java.util.List;
import wherefrom.quantity.Dimension;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Inputs;
import wherefrom.workings.MissingInputs;
import wherefrom.workings.Note;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.catalogue.basis.WorkingSources;
import wherefrom.workings.maths.DualNumber;

/** The torque that gives a preload: T = K·D·F. */
public final class TorqueForPreload implements Working {
  static final AmountInput DIAMETER =
      AmountInput.length("diameter", "The thread's nominal diameter, such as 0.4375in.");
  private static final AmountInput PRELOAD =
      AmountInput.of("preload", Dimension.FORCE, "The pull wanted in the bolt.");

  private static final WorkingCard CARD =
      new WorkingCard(
          "torque",
          "Torque for a preload",
          List.of(DIAMETER, PRELOAD, Lubricant.CHOICE, Lubricant.NUT_FACTOR),
          "torque = K·diameter·preload",
          WorkingSources.TORQUE,
          List.of(
              "The preload scatters by about ±30 % at one torque.",
              "The torque in the engine's service information outranks this figure."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Inputs completed(Inputs inputs) {
    return Lubricant.withNutFactor(inputs);
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    if (!terms.has(Lubricant.NUT_FACTOR)) {
      return new MissingInputs(List.of(Lubricant.NUT_FACTOR));
    }
    DualNumber arm = terms.get(Lubricant.NUT_FACTOR).times(terms.get(DIAMETER));
    return Values.of(
            "torque", "torque", terms.unit(Dimension.TORQUE), arm.times(terms.get(PRELOAD)))
        .note(threads(terms));
  }

  static Note threads(Terms terms) {
    return Note.remark(
        "threads",
        "For threads " + terms.getChoice(Lubricant.CHOICE) + " only. Write it beside the torque.",
        WorkingSources.TORQUE);
  }
}
