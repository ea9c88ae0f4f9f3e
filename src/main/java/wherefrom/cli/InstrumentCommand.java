package wherefrom.cli;

import wherefrom.job.measure.Instruments;
import wherefrom.job.ports.Equipment;

/** Something done to the list of tools or limits; each is a command of its own. */
final class InstrumentCommand implements Command {

  /** What is done. */
  interface Deed {
    Instruments.Answer of(Instruments instruments, Call call) throws BadInput;
  }

  private final Usage usage;
  private final Deed deed;
  private final Equipment equipment;

  InstrumentCommand(Usage usage, Deed deed, Equipment equipment) {
    this.usage = usage;
    this.deed = deed;
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    return usage;
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput {
    try (Bench bench = Bench.open(equipment, call, answer)) {
      Instruments.Answer came = deed.of(new Instruments(bench.job()), call);
      if (came instanceof Instruments.Answer.Refused refused) {
        throw new BadInput(refused.sentence());
      }
      String sentence = ((Instruments.Answer.Kept) came).sentence();
      answer.only(Fields.of("sentence", sentence), sentence);
      return Status.RIGHT;
    }
  }
}
