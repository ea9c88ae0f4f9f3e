package wherefrom.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.job.measure.WeightSet;
import wherefrom.job.numbers.BobWeight;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.text.Words;
import wherefrom.workings.ResultValue;

/** Weights: matched sets, what to take off which, the bob weight for the balancer. */
final class WeightCommands {
  private static final Option WHAT =
      Option.needed("--what", "NAME", "shells, rings, locks, oil, rods or share");
  private static final Option FIGURE =
      Option.needed("--figure", "N", "a weight such as 45g; for rods and share a plain number");

  private WeightCommands() {}

  static List<Command> all() {
    return List.of(
        Command.of("weight list", "Lists what was weighed, and what to take off which.")
            .lists(
                (bench, call) ->
                    WeightSet.list(bench.state()).stream()
                        .flatMap(
                            set -> set.members().stream().map(one -> new MemberRow(set, one)))),
        Command.of("weight bob", "Works out the bob weight of one crank pin.")
            .noting("The share of most V8 engines is 0.5: common practice, no source.")
            .tells((bench, call) -> BobRow.of(new BobWeight(bench.job()))),
        Command.of("weight set", "Keeps what is weighed once for all.", WHAT, FIGURE)
            .tells(WeightCommands::set));
  }

  private record MemberRow(WeightSet set, WeightSet.Member member) implements Row {
    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "plan", set.plan().key(),
          "where", member.where(),
          "weight", member.weight().value(),
          "take-off", member.takeOff().value(),
          "uncertainty", member.takeOff().standardUncertainty(),
          "unit", member.weight().unit().symbol(),
          "matched", !member.isHeavier());
    }

    @Override
    public String text() {
      return Answer.cells(set.plan().key(), member.where(), member.weight().text(), member.words());
    }
  }

  private record BobRow(
      List<String> missing,
      Optional<Double> rotating,
      Optional<Double> upAndDown,
      Optional<Double> bobWeight,
      Optional<Double> uncertainty,
      String sentence)
      implements Row {
    static BobRow of(BobWeight working) {
      BobWeight.Answer answer = working.answer();
      return new BobRow(
          answer.missing(),
          answer.rotating().map(ResultValue::value),
          answer.upAndDown().map(ResultValue::value),
          answer.bob().map(ResultValue::value),
          answer.bob().map(ResultValue::standardUncertainty),
          working.slip().orElseGet(() -> Words.sentence(working.sentence())));
    }

    @Override
    public String text() {
      return sentence;
    }
  }

  private static Row set(OpenedJob bench, Call call) throws BadInput {
    BobWeight.Typed what =
        BobWeight.Typed.find(call.get(WHAT))
            .orElseThrow(() -> call.wrong("Use one of: shells, rings, locks, oil, rods, share."));
    if (!BobWeight.isUsed(bench.state().layout())) {
      throw new BadInput(new BobWeight(bench.job()).sentence());
    }
    BobWeight working = new BobWeight(bench.job());
    if (working.set(what, call.get(FIGURE)) instanceof FigureOutcome.Refused refused) {
      throw new BadInput(refused.sentence());
    }
    return BobRow.of(working);
  }
}
