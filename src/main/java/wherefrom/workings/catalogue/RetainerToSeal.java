package wherefrom.workings.catalogue;

import java.util.List;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Note;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.maths.Dual;

/** The room left between retainer and stem seal at full lift. */
public final class RetainerToSeal implements Working {
  public static final AmountInput GAP =
      AmountInput.length("seal-gap", "Retainer to seal or guide top, valve closed.");

  /** 0.050 in. */
  public static final Minimum LEAST = new Minimum("0.050 in", "1.27", Source.fromMemory());

  private static final WorkingCard CARD =
      new WorkingCard(
          "retainer-to-seal",
          "Retainer to seal",
          List.of(GAP, CoilBind.LIFT),
          "margin = gap − lift",
          Source.commonPractice(),
          List.of("Measure with the seal and the retainer that will be used."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    Dual margin = terms.get(GAP).minus(terms.get(CoilBind.LIFT));
    return Values.of("margin", "retainer to seal at full lift", terms.lengthUnit(), margin)
        .noteIf(LEAST.isUndercutBy(margin), RetainerToSeal::caution);
  }

  static Note caution() {
    return Note.caution(
        "seal-near",
        "Under the usual least of " + LEAST.words() + ": the retainer may crush the seal.",
        LEAST.source());
  }
}
