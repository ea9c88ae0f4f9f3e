package wherefrom.cli;

import java.util.List;
import wherefrom.job.ports.Equipment;
import wherefrom.rules.Cycle;

/** Says the shortest way out of parts that sit in each other's places. */
final class CyclesCommand implements Command {
  private final Equipment equipment;

  CyclesCommand(Equipment equipment) {
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    return Usage.of(
        "cycles",
        "",
        "Says the shortest way out of parts that sit in each other's places.",
        Option.JOB);
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput {
    try (Bench bench = Bench.open(equipment, call, answer)) {
      List<Cycle> cycles = Cycle.of(bench.job().state().fitted());
      for (Cycle cycle : cycles) {
        answer.row(
            Fields.of("closed", cycle.closed())
                .and("parts", cycle.moves().stream().map(move -> move.part().item()).toList())
                .and("words", cycle.words()),
            cycle.words());
      }
      if (cycles.isEmpty()) {
        answer.say("Every fitted part sits in its own place.");
      }
      return Status.RIGHT;
    }
  }
}
