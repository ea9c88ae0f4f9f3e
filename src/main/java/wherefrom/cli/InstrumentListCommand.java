package wherefrom.cli;

import wherefrom.inspection.measure.Limit;
import wherefrom.inspection.measure.Tool;
import wherefrom.job.ports.Equipment;
import wherefrom.quantity.Amount;

/** Lists the tools, or the limits. */
final class InstrumentListCommand implements Command {
  private final Equipment equipment;
  private final boolean tools;

  InstrumentListCommand(Equipment equipment, boolean tools) {
    this.equipment = equipment;
    this.tools = tools;
  }

  @Override
  public Usage usage() {
    return tools
        ? Usage.of("tool list", "", "Lists the tools that you measure with.", Option.JOB)
        : Usage.of("limit list", "", "Lists the limits typed for this engine.", Option.JOB);
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput {
    try (Bench bench = Bench.open(equipment, call, answer)) {
      if (tools) {
        bench.job().state().measures().tools().forEach(tool -> row(bench, tool, answer));
      } else {
        bench.job().state().measures().limits().forEach(limit -> row(limit, answer));
      }
      return Status.RIGHT;
    }
  }

  private static void row(Bench bench, Tool tool, Answer answer) {
    String zero = bench.job().state().measures().findZero(tool.name()).orElse("not checked");
    answer.row(
        Fields.of("name", tool.name())
            .and("step", tool.resolution().text())
            .and("error", tool.error().text())
            .and("repeat", tool.repeat().text())
            .and("zero", zero),
        Answer.cells(
            tool.name(),
            tool.resolution().text(),
            tool.error().text(),
            tool.repeat().text(),
            "zero: " + zero));
  }

  private static void row(Limit limit, Answer answer) {
    answer.row(
        Fields.of("plan", limit.plan())
            .and("result", limit.result())
            .and("lower", limit.lower().map(Amount::text).orElse(""))
            .and("upper", limit.upper().map(Amount::text).orElse(""))
            .and("source", limit.source()),
        Answer.cells(limit.plan(), limit.result(), limit.words(), limit.source()));
  }
}
