package wherefrom.cli;

import java.io.BufferedReader;
import java.io.IOException;
import wherefrom.job.EngineJob;
import wherefrom.job.ports.Equipment;
import wherefrom.job.puttogether.WhereTo;
import wherefrom.job.tags.Found;

/** Says where a part goes, or what belongs at a place. */
final class WhereCommand implements Command {
  private final Equipment equipment;
  private final Codes codes;

  WhereCommand(Equipment equipment, BufferedReader in) {
    this.equipment = equipment;
    this.codes = Codes.single(in);
  }

  @Override
  public Usage usage() {
    return Usage.of(
        "where",
        "CODE…|-",
        "Says where a part goes, or what belongs at a place; logs nothing.",
        Option.JOB);
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput, IOException {
    try (Bench bench = Bench.open(equipment, call, answer)) {
      return codes.each(call, answer, code -> where(bench, code.get(0), answer));
    }
  }

  private static Status where(Bench bench, String code, Answer answer) {
    EngineJob state = bench.job().state();
    Found found = bench.book().find(code);
    Fields fields = Fields.of("code", code).and("meaning", Meaning.of(found));
    if (found instanceof Found.Refused refused) {
      String sentence = Meaning.sentence(refused.verdict());
      answer.row(fields.and("sentence", sentence), refused.verdict().word(), sentence);
      return Status.STOPPED;
    }
    String sentence = Meaning.sentence(found);
    if (found instanceof Found.APart part) {
      sentence = WhereTo.words(state, part.part().part());
    } else if (found instanceof Found.ASpot spot) {
      sentence = WhereTo.words(state, spot.spot());
    }
    answer.row(fields.and("sentence", sentence), sentence);
    return Status.RIGHT;
  }
}
