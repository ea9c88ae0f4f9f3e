package wherefrom.cli;

import wherefrom.job.BearingClearance;
import wherefrom.job.OilClearances;
import wherefrom.job.ports.Equipment;

/** The oil clearance of every bearing, as far as its pieces are measured. */
final class ClearanceCommand implements Command {
  private final Equipment equipment;

  ClearanceCommand(Equipment equipment) {
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    return Usage.of(
        "clearance",
        "",
        "Works out the oil clearance of every bearing from housing, shells and journal.",
        Option.JOB);
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput {
    try (Bench bench = Bench.open(equipment, call, answer)) {
      new OilClearances(bench.job().state()).list().forEach(bearing -> row(bearing, answer));
      return Status.RIGHT;
    }
  }

  private static void row(BearingClearance bearing, Answer answer) {
    Fields fields = Fields.of("bearing", bearing.words()).and("missing", bearing.missing());
    bearing
        .clearance()
        .ifPresent(
            value ->
                fields
                    .and("clearance", value.value())
                    .and("uncertainty", value.standardUncertainty())
                    .and("unit", value.unit().symbol()));
    bearing
        .range()
        .ifPresent(
            range ->
                fields
                    .and("least", range.smallest().amount().in(range.smallest().unit()))
                    .and("most", range.largest().amount().in(range.smallest().unit())));
    bearing.judgement().ifPresent(judged -> fields.and("answer", ResultRows.word(judged)));
    answer.row(
        fields.and("sentence", bearing.sentence()),
        Answer.cells(bearing.words(), bearing.sentence()));
  }
}
