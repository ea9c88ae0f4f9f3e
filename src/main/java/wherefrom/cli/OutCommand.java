package wherefrom.cli;

import java.io.BufferedReader;
import java.io.IOException;
import wherefrom.job.PartRecord;
import wherefrom.job.ports.Equipment;
import wherefrom.job.takeapart.TakeApart;
import wherefrom.rules.Verdict;

/** Logs parts that came out of the engine. */
final class OutCommand implements Command {
  private final Equipment equipment;
  private final Codes codes;

  OutCommand(Equipment equipment, BufferedReader in) {
    this.equipment = equipment;
    this.codes = Codes.single(in);
  }

  @Override
  public Usage usage() {
    return Usage.of("out", "CODE…|-", "Logs parts that came out of the engine.", Option.JOB)
        .noting("A line a part: digits, what was done, the part.");
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput, IOException {
    try (Bench bench = Bench.open(equipment, call, answer)) {
      return codes.each(call, answer, code -> out(bench, code.get(0), answer));
    }
  }

  private static Status out(Bench bench, String code, Answer answer) throws BadInput {
    TakeApart.Answer out = new TakeApart(bench.job(), bench.names()).out(code);
    if (out instanceof TakeApart.Answer.CameOut came) {
      return list(bench, "out", came.part(), answer);
    }
    if (out instanceof TakeApart.Answer.AlreadyOut already) {
      return list(bench, "already out", already.part(), answer);
    }
    if (out instanceof TakeApart.Answer.NoPart other) {
      throw new BadInput(
          code + " is no part's tag: " + Meaning.of(other.found()) + ". Give the part's code.");
    }
    Verdict verdict = ((TakeApart.Answer.Refused) out).verdict();
    answer.row(
        Meaning.fields(verdict).and("code", code),
        Answer.cells(code, verdict.word(), Meaning.sentence(verdict)));
    return Status.STOPPED;
  }

  private static Status list(Bench bench, String done, PartRecord part, Answer answer) {
    String digits = bench.book().of(part.part()).digits();
    answer.row(
        Fields.of("code", digits).and("done", done).and("part", part.part().words()),
        Answer.cells(digits, done, part.part().words()));
    return Status.RIGHT;
  }
}
