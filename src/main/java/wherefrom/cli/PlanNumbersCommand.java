package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wherefrom.job.OpenJob;
import wherefrom.job.money.CostItem;
import wherefrom.job.numbers.PlanBook;
import wherefrom.job.numbers.PlanEffects;
import wherefrom.job.numbers.PlanFollowing;
import wherefrom.workings.Inputs;
import wherefrom.workings.plan.Margin;
import wherefrom.workings.plan.PlanAnswer;
import wherefrom.workings.plan.PlanColumn;
import wherefrom.workings.plan.PlanWorking;
import wherefrom.workings.plan.WhatIf;
import wherefrom.workings.plan.WhatIfPlan;

/** The plan in figures: how things are now, and up to three what-ifs. */
final class PlanNumbersCommand {
  private static final Option NOW =
      Option.several("--now", "KEY=VALUE", "how things are now; commas separate them");
  private static final Option WHAT_IF =
      Option.several(
          "--idea",
          "KEY=VALUE",
          "one change of figures a value, at most " + WhatIfPlan.MOST_WHAT_IFS);
  private static final Option JOB =
      Option.maybe("--job", "DIR", "the job whose kept plan is shown, and whose prices count");

  private PlanNumbersCommand() {}

  static Command of() {
    return Command.of(
            "plan numbers",
            "Works out ratio, cuts, intake, pushrods, lift and piston to valve, side by side.",
            NOW,
            WHAT_IF,
            JOB)
        .noting(
            "plan numbers --now bore=3.87in,stroke=3.31in,… --idea target=9.5"
                + " target=10,deck-cut=0.010in",
            "Without --now the plan that the job keeps is shown. Values are typed as for"
                + " \"workings\"; \"workings\" names their keys. A comma before a key separates"
                + " two figures; any other is a decimal mark.")
        .does((call, answer) -> run(call, answer));
  }

  private static Status run(Call call, Answer answer) throws BadInput {
    if (!call.has(JOB)) {
      return show(typed(call), Optional.empty(), answer);
    }
    try (OpenedJob bench = OpenedJob.open(call, answer)) {
      WhatIfPlan plan = call.has(NOW) ? typed(call) : new PlanBook(bench.job()).plan();
      return show(plan, Optional.of(bench.job()), answer);
    }
  }

  private static WhatIfPlan typed(Call call) throws BadInput {
    PlanWorking working = new PlanWorking();
    Inputs now = WorkingsCommand.read(working, FigureList.of(call.all(NOW.name())));
    List<WhatIf> whatIfs = new ArrayList<>();
    for (String one : call.all(WHAT_IF.name())) {
      Inputs changes = WorkingsCommand.read(working, FigureList.of(List.of(one)));
      whatIfs.add(new WhatIf("idea " + (whatIfs.size() + 1), changes));
    }
    if (now.entries().isEmpty() && whatIfs.isEmpty()) {
      throw call.wrong("Give --now with figures, or --job with a kept plan.");
    }
    if (whatIfs.size() > WhatIfPlan.MOST_WHAT_IFS) {
      throw call.wrong("At most " + WhatIfPlan.MOST_WHAT_IFS + " ideas stand beside now.");
    }
    return new WhatIfPlan(now, whatIfs);
  }

  private static Status show(WhatIfPlan plan, Optional<OpenJob> job, Answer answer)
      throws BadInput {
    List<PlanAnswer> answers = plan.work();
    for (PlanAnswer each : answers) {
      if (each instanceof PlanAnswer.Refused refused) {
        throw new BadInput(refused.name() + ": " + refused.nonsense().sentence());
      }
    }
    for (PlanAnswer each : answers) {
      PlanColumn column = (PlanColumn) each;
      answer.row(ColumnRow.of(column, job.map(open -> PlanFollowing.of(open, column))));
    }
    return Status.RIGHT;
  }

  private record MarginRow(String key, String standing, String usualLeast, String source) {
    static MarginRow of(Margin margin) {
      return new MarginRow(
          margin.result().key(),
          word(margin),
          margin.least().words(),
          margin.least().source().text());
    }
  }

  private static String word(Margin margin) {
    return margin.standing().name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private record ColumnRow(
      WorkedRow worked,
      String column,
      List<MarginRow> margins,
      List<String> consequences,
      Optional<List<String>> follows,
      Optional<List<String>> checks,
      Optional<String> cost,
      Row.Beside told)
      implements Row {
    static ColumnRow of(PlanColumn column, Optional<PlanEffects> effects) {
      return new ColumnRow(
          WorkedRow.of(column.result()),
          column.name(),
          column.margins().stream().map(MarginRow::of).toList(),
          column.consequences().stream().map(each -> each.key()).toList(),
          effects.map(known -> known.lines().stream().map(CostItem::sentence).toList()),
          effects.map(PlanEffects::checks),
          effects.map(known -> known.cost().sum().text()),
          new Row.Beside(Row.lines(following(column, effects))));
    }

    @Override
    public String text() {
      return Row.lines("== " + column, worked.text(), told.text());
    }
  }

  private static List<String> following(PlanColumn column, Optional<PlanEffects> effects) {
    List<String> lines = new ArrayList<>();
    column.margins().forEach(m -> lines.add(Answer.cells("margin", word(m), m.sentence())));
    column.consequences().forEach(c -> lines.add(Answer.cells("follows", c.words())));
    effects.ifPresent(
        known -> {
          known.lines().forEach(line -> lines.add(Answer.cells("follows", line.sentence())));
          known.checks().forEach(check -> lines.add(Answer.cells("check", check)));
          lines.add(Answer.cells("cost", known.moneyWords(), known.cost().total()));
        });
    return lines;
  }
}
