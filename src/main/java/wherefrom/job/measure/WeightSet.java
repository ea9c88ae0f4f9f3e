package wherefrom.job.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.WeightPlans;
import wherefrom.job.EngineJob;
import wherefrom.job.MeasuredResult;
import wherefrom.job.PartRecord;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Unit;
import wherefrom.workings.ResultValue;

/**
 * Parts of a kind that were weighed, matched to the lightest: weight is taken off, never put on.
 * Parts that were replaced do not count.
 */
public record WeightSet(ReadingPlan plan, List<Member> members) {

  /**
   * One part of the set.
   *
   * @param weight as weighed, in grams
   * @param takeOff above the lightest; independent weighings add in quadrature (JCGM 100, 5.1.2)
   */
  public record Member(int item, String where, ResultValue weight, ResultValue takeOff) {

    /** Whether the scale can tell it from the lightest, at twice the standard uncertainty. */
    public boolean isHeavier() {
      return takeOff.value() > 2 * takeOff.standardUncertainty();
    }

    /** {@code take off 3.2 g}, {@code matched}. */
    public String words() {
      return isHeavier()
          ? "take off " + takeOff.amount().rounded(takeOff.unit().decimals()).text()
          : "matched";
    }
  }

  public WeightSet {
    members = List.copyOf(members);
  }

  /** Every set of which something is weighed. */
  public static List<WeightSet> list(EngineJob job) {
    return WeightPlans.all().stream()
        .map(plan -> of(job, plan))
        .filter(set -> !set.members().isEmpty())
        .toList();
  }

  /** The places of the set whose parts were not weighed, in the engine's order. */
  public List<String> unweighed(EngineJob job) {
    Set<Integer> weighed = members.stream().map(Member::item).collect(Collectors.toSet());
    return job.parts().stream()
        .filter(record -> record.part().kind().key().equals(plan.of()))
        .filter(record -> record.where() != Whereabouts.RETIRED)
        .filter(record -> !weighed.contains(record.part().item()))
        .map(record -> record.part().home().figures())
        .toList();
  }

  /** The lightest, to which the others are brought. */
  public Optional<Member> findLightest() {
    return members.stream().min(Comparator.comparingDouble(one -> one.weight().value()));
  }

  /** How many are heavier than the scale can tell from the lightest. */
  public long countHeavier() {
    return members.stream().filter(Member::isHeavier).count();
  }

  public static WeightSet of(EngineJob job, ReadingPlan plan) {
    List<Member> weighed = new ArrayList<>();
    for (MeasuredResult result : job.measures().listResults(plan.key())) {
      member(job, result).ifPresent(weighed::add);
    }
    Optional<ResultValue> least =
        weighed.stream().map(Member::weight).min(Comparator.comparingDouble(ResultValue::value));
    return new WeightSet(
        plan, weighed.stream().map(one -> above(one, least.orElseThrow())).toList());
  }

  private static Optional<Member> member(EngineJob job, MeasuredResult result) {
    if (!(result.subject() instanceof Subject.APart tagged)) {
      return Optional.empty();
    }
    PartRecord record = job.getPart(tagged.item());
    Optional<ResultValue> value = result.findValue("value").map(WeightSet::inGrams);
    return record.where() == Whereabouts.RETIRED
        ? Optional.empty()
        : value.map(
            weight -> new Member(tagged.item(), record.part().home().figures(), weight, weight));
  }

  private static ResultValue inGrams(ResultValue value) {
    double grams = value.amount().in(Unit.GRAM);
    double u =
        wherefrom.quantity.Amount.of(value.standardUncertainty(), value.unit()).in(Unit.GRAM);
    return new ResultValue("weight", "weight", Unit.GRAM, grams, u, List.of());
  }

  private static Member above(Member one, ResultValue least) {
    boolean itself = one.weight().value() == least.value();
    double u =
        itself ? 0 : Math.hypot(one.weight().standardUncertainty(), least.standardUncertainty());
    ResultValue off =
        new ResultValue(
            "take-off", "take off", Unit.GRAM, one.weight().value() - least.value(), u, List.of());
    return new Member(one.item(), one.where(), one.weight(), off);
  }
}
