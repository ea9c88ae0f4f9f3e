package wherefrom.workings.catalogue.size;

import java.util.List;
import java.util.Optional;
import wherefrom.quantity.Unit;
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

/** The next standard undersize a worn journal can be ground to. */
public final class NextUndersize implements Working {
  static final AmountInput STANDARD =
      AmountInput.length("standard", "The journal's lowest standard diameter, not yet ground.");
  static final AmountInput AS_CUT =
      AmountInput.length(
              "as-cut", "The diameter it was last ground to; leave out where it was never ground.")
          .optional();
  private static final AmountInput SMALLEST =
      AmountInput.length("smallest", "The smallest diameter measured on the journal.");

  private static final WorkingCard CARD =
      new WorkingCard(
          "next-undersize",
          "Next undersize",
          List.of(STANDARD, SMALLEST, AS_CUT),
          "wear = as cut − smallest; clean-up = as cut − 2·wear; the first step under standard that"
              + " is no larger",
          SizeSteps.UNDERSIZES.source(),
          List.of(
              SizeSteps.COUNTED,
              "Wear is taken as one-sided, so grinding must take twice as much off the diameter.",
              "The grinder decides: cracks, fillets and hardening depth are not in it."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    DualNumber standard = terms.get(STANDARD);
    DualNumber cut = terms.find(AS_CUT).orElse(standard);
    DualNumber wear = cut.minus(terms.get(SMALLEST));
    Optional<DualNumber> step =
        SizeSteps.UNDERSIZES.findStep(standard.minus(cut), wear, terms.lengthUnit());
    if (step.isEmpty()) {
      return new Nonsense(
          SMALLEST.key(),
          "At "
              + terms.text(SMALLEST)
              + " the journal is worn past the last usual undersize. Check both figures. Ask"
              + " the machine shop about welding up or another crank.");
    }
    return withStep(terms, standard, cut.minus(wear.times(2)), step.get());
  }

  @Override
  public List<Note> questions(Terms terms) {
    return terms.get(STANDARD).isLessThan(terms.get(SMALLEST))
        ? List.of(overStandard())
        : List.of();
  }

  static Note overStandard() {
    return Note.question(
        "over-standard",
        "The smallest reading is over the standard size. Is that size right?",
        Source.commonPractice());
  }

  private static Values withStep(
      Terms terms, DualNumber standard, DualNumber cleanUp, DualNumber step) {
    Unit unit = terms.lengthUnit();
    return Values.of("undersize", "next step under standard", unit, step)
        .and("diameter", "journal afterwards", unit, standard.minus(step))
        .and("clean-up", "largest size that cleans up", unit, cleanUp)
        .note(
            Note.remark(
                "all-alike",
                "When one journal is ground, grind all of its kind. Fit shells of that size.",
                Source.published("TM 5-3805-262-34, 4-24")));
  }
}
