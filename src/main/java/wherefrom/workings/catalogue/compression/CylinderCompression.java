package wherefrom.workings.catalogue.compression;

import java.util.List;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.maths.DualNumber;

/** A cylinder's cranking pressure beside the highest, and what oil in it brings. */
public final class CylinderCompression implements Working {
  private static final AmountInput DRY =
      AmountInput.of("dry", Dimension.STRESS, "The cylinder's pressure as it is.");
  private static final AmountInput HIGHEST =
      AmountInput.of("highest", Dimension.STRESS, "The highest pressure of all cylinders, dry.");
  private static final AmountInput WET =
      AmountInput.of("wet", Dimension.STRESS, "The same cylinder with a spoon of oil in it.")
          .optional();

  private static final WorkingCard CARD =
      new WorkingCard(
          "cylinder-compression",
          "A cylinder's compression in its set",
          List.of(DRY, HIGHEST, WET),
          "share = dry / highest; rise = (wet − dry) / dry",
          Source.published(
              "TM 5-4210-230-14&P-1, Addendum 2: lowest not less than 75 % of the highest"),
          List.of(
              "The limit of your engine's manual outranks any common one.",
              "Warm engine, throttle open, full battery, as many strokes for each cylinder."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    DualNumber dry = terms.get(DRY);
    Values share =
        Values.of("share", "share of the highest", Unit.PERCENT, dry.dividedBy(terms.get(HIGHEST)));
    return terms
        .find(WET)
        .map(wet -> share.and("rise", "rise with oil", Unit.PERCENT, wet.minus(dry).dividedBy(dry)))
        .orElse(share);
  }
}
