package wherefrom.workings.catalogue.bearing;

import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Note;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.maths.DualNumber;

/** What the oil clearance workings share. */
final class Clearances {
  static final AmountInput JOURNAL = AmountInput.length("journal", "The journal's diameter.");
  static final Source SOURCE =
      Source.published(
          "NAVEDTRA 14050, Construction Mechanic Advanced (plain measuring); about 0.001 in per"
              + " inch of journal is common practice, no source");

  /** Four times what is usual per diameter. */
  private static final double WIDE = 0.004;

  private Clearances() {}

  static Evaluation answer(Terms terms, DualNumber inside) {
    DualNumber clearance = inside.minus(terms.get(JOURNAL));
    if (!DualNumber.of(0).isLessThan(clearance)) {
      return new Nonsense(
          JOURNAL.key(),
          "The journal ("
              + terms.text(JOURNAL)
              + ") would not go into the bearing. Measure again, and check the shells' size.");
    }
    return Values.of("clearance", "oil clearance", terms.lengthUnit(), clearance)
        .and(
            "per-diameter",
            "clearance per journal diameter",
            wherefrom.quantity.Unit.ONE,
            clearance.dividedBy(terms.get(JOURNAL)))
        .noteIf(
            terms.get(JOURNAL).times(WIDE).isLessThan(clearance),
            () ->
                Note.question(
                    "clearance-wide",
                    "About 0.001 in per in of journal is usual. Read every size again.",
                    SOURCE));
  }
}
