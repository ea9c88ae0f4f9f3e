package wherefrom.workings.catalogue.size;

import java.util.ArrayList;
import java.util.List;
import wherefrom.quantity.Unit;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Note;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.catalogue.basis.Sisters;
import wherefrom.workings.catalogue.basis.Spread;
import wherefrom.workings.maths.DualNumber;

/** Out-of-round, taper and wear of a journal from two planes, two ways each. */
public final class JournalShape implements Working {
  private static final AmountInput FRONT_A = reading("front-vertical");
  private static final AmountInput FRONT_B = reading("front-horizontal");
  private static final AmountInput REAR_A = reading("rear-vertical");
  private static final AmountInput REAR_B = reading("rear-horizontal");

  private static final AmountInput AS_CUT = NextUndersize.AS_CUT;

  private static AmountInput reading(String key) {
    return AmountInput.length(key, "Clear of fillet and oil hole; the two directions 90° apart.");
  }

  private static final WorkingCard CARD =
      new WorkingCard(
          "journal-shape",
          "Shape of a journal",
          List.of(FRONT_A, FRONT_B, REAR_A, REAR_B, NextUndersize.STANDARD, AS_CUT),
          "out-of-round = largest |vertical − horizontal| of a plane; taper = largest"
              + " |front − rear| in one direction; wear = as cut − smallest reading; next"
              + " step under standard as next-undersize",
          Source.published("TM 5-3805-262-34, 4-24 (limits 0.0005 in for that engine)"),
          List.of(
              SizeSteps.COUNTED,
              "Where two readings are alike within their uncertainty, the band of out-of-round and"
                  + " taper is an approximation.",
              "The limits are the engine's own."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    DualNumber frontA = terms.get(FRONT_A);
    DualNumber frontB = terms.get(FRONT_B);
    DualNumber rearA = terms.get(REAR_A);
    DualNumber rearB = terms.get(REAR_B);
    DualNumber outOfRound = frontA.minus(frontB).abs().max(rearA.minus(rearB).abs());
    DualNumber taper = frontA.minus(rearA).abs().max(frontB.minus(rearB).abs());
    DualNumber smallest = Spread.smallest(List.of(frontA, frontB, rearA, rearB));
    DualNumber standard = terms.get(NextUndersize.STANDARD);
    DualNumber cut = terms.find(AS_CUT).orElse(standard);
    DualNumber wear = cut.minus(smallest);
    Unit unit = terms.lengthUnit();
    Values values =
        Values.of("out-of-round", "out-of-round", unit, outOfRound)
            .and("taper", "taper", unit, taper)
            .and("smallest", "smallest reading", unit, smallest)
            .and("wear", "wear", unit, wear);
    return SizeSteps.UNDERSIZES
        .findStep(standard.minus(cut), wear, unit)
        .map(step -> values.and("undersize", "next step under standard that cleans up", unit, step))
        .orElseGet(() -> values.note(pastLast()));
  }

  @Override
  public List<Note> questions(Terms terms) {
    List<AmountInput> inputs = List.of(FRONT_A, FRONT_B, REAR_A, REAR_B);
    List<Note> questions = new ArrayList<>(Sisters.ask(terms, inputs, Sisters.SHAFT));
    DualNumber smallest = Spread.smallest(inputs.stream().map(terms::get).toList());
    if (terms.get(NextUndersize.STANDARD).isLessThan(smallest)) {
      questions.add(NextUndersize.overStandard());
    }
    return questions;
  }

  private static Note pastLast() {
    return Note.caution(
        "past-last-undersize",
        "Worn past the last usual undersize. Ask the machine shop.",
        SizeSteps.UNDERSIZES.source());
  }
}
