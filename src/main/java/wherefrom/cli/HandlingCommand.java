package wherefrom.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.Optional;
import wherefrom.job.FittingSize;
import wherefrom.job.PartRecord;
import wherefrom.job.SurfaceSizes;
import wherefrom.job.handling.Handled;
import wherefrom.job.handling.Handling;
import wherefrom.job.ports.Equipment;
import wherefrom.job.tags.Found;

/** Something that is done to parts between the two days; each is a command of its own. */
final class HandlingCommand implements Command {

  /** What is done to one part. */
  interface Deed {
    Handled of(Handling handling, int item, Call call) throws BadInput;
  }

  private final Usage usage;
  private final Deed deed;
  private final Equipment equipment;
  private final Codes codes;

  HandlingCommand(Usage usage, Deed deed, Equipment equipment, BufferedReader in) {
    this.usage = usage;
    this.deed = deed;
    this.equipment = equipment;
    this.codes = Codes.single(in);
  }

  @Override
  public Usage usage() {
    return usage;
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput, IOException {
    try (Bench bench = Bench.open(equipment, call, answer)) {
      return codes.each(call, answer, code -> handle(bench, code.get(0), call, answer));
    }
  }

  private Status handle(Bench bench, String code, Call call, Answer answer) throws BadInput {
    Found found = bench.find(code);
    if (!(found instanceof Found.APart part)) {
      throw new BadInput(code + " is no part of this job: " + Meaning.sentence(found));
    }
    Handled handled = deed.of(new Handling(bench.job()), part.part().part().item(), call);
    if (handled instanceof Handled.Refused refused) {
      throw new BadInput(refused.sentence());
    }
    PartRecord logged = ((Handled.Logged) handled).part();
    list(bench, logged, answer);
    sizeUnsaid(bench, logged, part.part()).ifPresent(answer::say);
    return Status.RIGHT;
  }

  /** What to do where a new part was taken on of which the list knows the size and nobody said. */
  private static Optional<String> sizeUnsaid(Bench bench, PartRecord now, PartRecord before) {
    SurfaceSizes sizes = new SurfaceSizes(bench.job().state());
    boolean taken = now.part().item() != before.part().item();
    return taken && sizes.findSizeOf(now.part().item()).isEmpty()
        ? sizes
            .findToBuy(now.part().home())
            .filter(FittingSize::isKnown)
            .map(
                size ->
                    "Nobody said its size. The list says "
                        + size.words()
                        + ": take back, and replace it with --size listed.")
        : Optional.empty();
  }

  private static void list(Bench bench, PartRecord part, Answer answer) {
    String digits = bench.book().of(part.part()).digits();
    String where = part.where().words() + part.awayTo().map(to -> ", " + to).orElse("");
    answer.row(
        Fields.of("code", digits)
            .and("item", part.part().item())
            .and("part", part.part().words())
            .and("where", where),
        Answer.cells(digits, part.part().words(), where));
  }
}
