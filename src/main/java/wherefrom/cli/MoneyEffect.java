package wherefrom.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import wherefrom.job.change.Planning;
import wherefrom.job.money.CostItem;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.money.PlanCost;
import wherefrom.job.ports.Equipment;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;

/** What a change would cost with all that it drags along; nothing is recorded. */
final class MoneyEffect implements Command {
  private final Equipment equipment;

  MoneyEffect(Equipment equipment) {
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    String kinds =
        Arrays.stream(ChangeKind.values())
            .filter(kind -> kind.origin() == ChangeKind.Origin.WORK)
            .map(MoneyEffect::key)
            .collect(Collectors.joining(", "));
    return Usage.of(
            "money effect",
            "",
            "Tells what a change would cost with all that it asks for; nothing is recorded.",
            Option.JOB,
            Option.needed("--change", "CHANGE", "one of those below"),
            Option.maybe("--where", "BANK|SPOT", "where, if not on the whole engine"))
        .noting("Changes: " + kinds + ".");
  }

  private static String key(ChangeKind kind) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput {
    String wanted = call.get("--change");
    ChangeKind kind =
        Arrays.stream(ChangeKind.values())
            .filter(each -> key(each).equals(wanted))
            .findFirst()
            .orElseThrow(() -> new BadInput("There is no change \"" + wanted + "\": see --help."));
    Change change = Change.at(kind, call.find("--where").orElse(""));
    try (Bench bench = Bench.open(equipment, call, answer)) {
      var fault = new Planning(bench.job()).findWrong(change);
      if (fault.isPresent()) {
        throw new BadInput(fault.get());
      }
      PlanCost effect = new MoneyBook(bench.job()).effect(change);
      answer.only(
          MoneyCommands.fields(effect.withIt())
              .and("sentence", effect.total())
              .and("items", rows(effect.lines()))
              .and("perhaps", rows(effect.perhaps()))
              .and("sum", effect.sum().text())
              .and("atLeast", effect.atLeast()),
          effect.sentence());
      return Status.RIGHT;
    }
  }

  static List<Object> rows(List<CostItem> items) {
    List<Object> rows = new ArrayList<>();
    for (CostItem item : items) {
      rows.add(
          Fields.of("what", item.what())
              .and("pieces", item.pieces())
              .and("priced", item.priced())
              .and("amount", item.amount().text())
              .and("rule", item.because())
              .all());
    }
    return rows;
  }
}
