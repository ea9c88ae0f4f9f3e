package wherefrom.workings.catalogue.compression;

import java.util.List;
import wherefrom.quantity.Dimension;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Note;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.maths.DualNumber;

/** How much to mill off the head for a smaller chamber. */
public final class HeadCut implements Working {
  static final AmountInput CHAMBER_NOW =
      AmountInput.of("chamber-now", Dimension.VOLUME, "The chamber as poured now.");
  static final AmountInput CHAMBER_WANTED =
      AmountInput.of("chamber-wanted", Dimension.VOLUME, "The chamber after the cut.");

  /** A volume per depth is an area: a traced opening serves as well. */
  public static final AmountInput OPENING =
      AmountInput.of(
          "opening",
          Dimension.AREA,
          "The chamber's opening at the deck, traced (in², cm²) or poured (cc/thou, cc/mm)."
              + " Measure it: chamber walls slope, so no table is safe.");

  /** In mm: 0.12 in. */
  private static final double MOST_USUAL = 3;

  private static final WorkingCard CARD =
      new WorkingCard(
          "head-cut",
          "Cut for a smaller chamber",
          List.of(CHAMBER_NOW, CHAMBER_WANTED, OPENING),
          "cut = (chamber now − chamber wanted) / opening",
          Source.commonPractice(),
          List.of(
              "Holds for a cut so thin that the opening keeps its size; with sloping walls it is a"
                  + " little too small.",
              "Or level the head, pour the wanted volume and measure down to the liquid."
                  + " That depth is the cut.",
              "How much the head may lose is the engine's own figure. See its service"
                  + " information."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    DualNumber removed = terms.get(CHAMBER_NOW).minus(terms.get(CHAMBER_WANTED));
    if (removed.isLessThan(DualNumber.of(0))) {
      return new Nonsense(
          CHAMBER_WANTED.key(),
          "The wanted chamber ("
              + terms.text(CHAMBER_WANTED)
              + ") is larger than the present one ("
              + terms.text(CHAMBER_NOW)
              + "). Milling only makes it smaller.");
    }
    DualNumber cut = removed.dividedBy(terms.get(OPENING));
    return Values.of("cut", "cut", terms.lengthUnit(), cut)
        .noteIf(
            DualNumber.of(MOST_USUAL).isLessThan(cut),
            () ->
                Note.question(
                    "cut-deep",
                    "More than a usual head can lose. Read volumes and opening again.",
                    Source.commonPractice()))
        .note(
            Note.caution(
                "least-head",
                "Check the minimum head height in the engine's service information. Cut both"
                    + " heads of a V alike.",
                Source.published(
                    "TM 10-3930-653-14&P, 4-28, allows 2.0 mm; TM 5-3820-256-24-5, p. 18, 0.010"
                        + " in")));
  }
}
