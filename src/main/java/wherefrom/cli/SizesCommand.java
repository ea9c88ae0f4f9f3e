package wherefrom.cli;

import java.util.Optional;
import wherefrom.job.FittingSize;
import wherefrom.job.SurfaceSize;
import wherefrom.job.SurfaceSizes;
import wherefrom.job.ports.Equipment;
import wherefrom.quantity.Amount;

/** The three sizes of every journal and bore, and what fits it as it is. */
final class SizesCommand implements Command {
  private static final String NONE = "-";

  private final Equipment equipment;

  SizesCommand(Equipment equipment) {
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    return Usage.of(
            "sizes",
            "",
            "Lists every journal and bore: standard, as cut, as measured, what fits it.",
            Option.JOB)
        .noting("What is to be bought, for cuts that are only planned too: decide buy.");
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput {
    try (Bench bench = Bench.open(equipment, call, answer)) {
      SurfaceSizes sizes = new SurfaceSizes(bench.job().state());
      sizes.list().forEach(size -> row(size, sizes.getFitting(size), answer));
      return Status.RIGHT;
    }
  }

  private static void row(SurfaceSize size, FittingSize fits, Answer answer) {
    answer.row(
        Fields.of("what", size.words())
            .and("standard", text(size.standard(), ""))
            .and("asCut", text(size.asCut(), ""))
            .and("measured", text(size.mostWorn(), ""))
            .and("step", text(fits.step().filter(step -> fits.isKnown()), ""))
            .and("fits", fits.words()),
        Answer.cells(
            size.words(),
            text(size.standard(), NONE),
            text(size.asCut(), NONE),
            text(size.mostWorn(), NONE),
            fits.words()));
  }

  private static String text(Optional<Amount> amount, String none) {
    return amount.map(Amount::text).orElse(none);
  }
}
