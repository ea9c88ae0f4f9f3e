package wherefrom.workings.catalogue.size;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wherefrom.quantity.Unit;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.InputSpec;
import wherefrom.workings.Note;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.catalogue.basis.Sisters;
import wherefrom.workings.catalogue.basis.Spread;
import wherefrom.workings.maths.DualNumber;

/** Out-of-round, taper and wear of a bore from three levels, two ways each. */
public final class BoreShape implements Working {
  public static final List<AmountInput> THRUST =
      List.of(thrust("thrust-top"), thrust("thrust-middle"), thrust("thrust-bottom"));
  public static final List<AmountInput> AXIAL =
      List.of(axial("axial-top"), axial("axial-middle"), axial("axial-bottom"));
  public static final AmountInput NOMINAL =
      AmountInput.length("nominal", "The bore's standard size, not yet bored.");
  private static final AmountInput AS_CUT =
      AmountInput.length(
              "as-cut", "The diameter it was last bored to; leave out where it was never bored.")
          .optional();

  private static AmountInput thrust(String key) {
    return AmountInput.length(key, "Square to the crank; top just under the ridge.");
  }

  private static AmountInput axial(String key) {
    return AmountInput.length(key, "Along the engine; same level as the thrust reading.");
  }

  @Override
  public WorkingCard card() {
    List<InputSpec> inputs = new java.util.ArrayList<>(THRUST);
    inputs.addAll(AXIAL);
    inputs.add(NOMINAL);
    inputs.add(AS_CUT);
    return new WorkingCard(
        "bore-shape",
        "Shape of a bore",
        inputs,
        "out-of-round = largest |thrust − axial| of a level; taper = largest"
            + " difference along one direction; wear = largest reading − as cut; clean-up ="
            + " as cut + 2·wear; the first step over nominal that is no smaller",
        Source.published("FAA-H-8083-32, chapter 10: two positions 90° apart per plane"),
        List.of(
            SizeSteps.COUNTED,
            "Wear is taken as one-sided (common practice), so boring takes twice as much.",
            "Where two readings are alike within their uncertainty, the band of out-of-round and"
                + " taper is an approximation.",
            "The limits are the engine's own."));
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    List<DualNumber> thrust = THRUST.stream().map(terms::get).toList();
    List<DualNumber> axial = AXIAL.stream().map(terms::get).toList();
    List<DualNumber> outOfRound =
        IntStream.range(0, thrust.size())
            .mapToObj(i -> thrust.get(i).minus(axial.get(i)).abs())
            .toList();
    DualNumber taper = Spread.range(thrust).max(Spread.range(axial));
    DualNumber wear = Spread.largest(thrust).max(Spread.largest(axial)).minus(cut(terms));
    Unit unit = terms.lengthUnit();
    Values values =
        Values.of("out-of-round", "out-of-round", unit, Spread.largest(outOfRound))
            .and("taper", "taper", unit, taper)
            .and("wear", "wear", unit, wear);
    return withOversize(terms, values, wear);
  }

  @Override
  public List<Note> questions(Terms terms) {
    List<Note> questions =
        new ArrayList<>(
            Sisters.ask(
                terms, Stream.concat(THRUST.stream(), AXIAL.stream()).toList(), Sisters.BORE));
    List<DualNumber> readings =
        Stream.concat(THRUST.stream(), AXIAL.stream()).map(terms::get).toList();
    if (Spread.largest(readings).isLessThan(terms.get(NOMINAL))) {
      questions.add(
          Note.question(
              "under-nominal",
              "Every reading is under the nominal size. Is that size right?",
              Source.commonPractice()));
    }
    return questions;
  }

  private static DualNumber cut(Terms terms) {
    return terms.find(AS_CUT).orElseGet(() -> terms.get(NOMINAL));
  }

  private static Values withOversize(Terms terms, Values values, DualNumber wear) {
    Unit unit = terms.lengthUnit();
    DualNumber cut = cut(terms);
    DualNumber worn = wear.max(DualNumber.of(0)).times(2);
    Optional<DualNumber> step =
        SizeSteps.OVERSIZES.findStep(cut.minus(terms.get(NOMINAL)), wear, unit);
    Values more = values.and("clean-up", "smallest clean bore", unit, cut.plus(worn));
    return step.map(s -> more.and("oversize", "next step over standard that cleans up", unit, s))
        .orElseGet(() -> more.note(pastLast()));
  }

  private static Note pastLast() {
    return Note.caution(
        "past-last-oversize",
        "Worn past the last usual oversize. Ask the machine shop about a sleeve.",
        SizeSteps.OVERSIZES.source());
  }
}
