package wherefrom.job.numbers;

import wherefrom.workings.EntryReading;
import wherefrom.workings.InputText;
import wherefrom.workings.Inputs;
import wherefrom.workings.WorkingCard;

/** Figures as typed to inputs of a working. */
public final class SheetInputs {
  private SheetInputs() {}

  /** The sheet's figures; one that a newer version kept and this one cannot read is left alone. */
  public static Inputs of(WorkingCard card, Sheet sheet) {
    Inputs inputs = Inputs.empty();
    for (var figure : sheet.figures().entrySet()) {
      boolean known = card.findInput(figure.getKey()).isPresent();
      EntryReading reading = InputText.readEntry(card, figure.getKey(), figure.getValue());
      if (known && reading instanceof EntryReading.Understood understood) {
        inputs = inputs.withEntry(figure.getKey(), understood.entry());
      }
    }
    return inputs;
  }
}
