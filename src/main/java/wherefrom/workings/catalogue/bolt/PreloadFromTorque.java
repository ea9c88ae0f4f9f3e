package wherefrom.workings.catalogue.bolt;

import java.util.List;
import wherefrom.quantity.Dimension;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Inputs;
import wherefrom.workings.MissingInputs;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.catalogue.basis.WorkingSources;
import wherefrom.workings.maths.DualNumber;

/** The preload a torque gives: F = T / (K·D). */
public final class PreloadFromTorque implements Working {
  private static final AmountInput TORQUE =
      AmountInput.of("torque", Dimension.TORQUE, "The torque the bolt is tightened to.");

  private static final WorkingCard CARD =
      new WorkingCard(
          "preload",
          "Preload from a torque",
          List.of(TorqueForPreload.DIAMETER, TORQUE, Lubricant.CHOICE, Lubricant.NUT_FACTOR),
          "preload = torque / (K·diameter)",
          WorkingSources.TORQUE,
          List.of(
              "The preload scatters by about ±30 % at one torque.",
              "Oil under a torque meant for dry threads overloads the bolt by a third."));

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
    DualNumber arm = terms.get(Lubricant.NUT_FACTOR).times(terms.get(TorqueForPreload.DIAMETER));
    DualNumber preload = terms.get(TORQUE).dividedBy(arm);
    return Values.of("preload", "preload", terms.unit(Dimension.FORCE), preload)
        .note(TorqueForPreload.threads(terms));
  }
}
