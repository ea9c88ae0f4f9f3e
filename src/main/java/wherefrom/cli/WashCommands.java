package wherefrom.cli;

import java.util.List;
import wherefrom.job.Equipment;
import wherefrom.job.PartRecord;
import wherefrom.job.Washing;
import wherefrom.parts.TagCode;

/** What lies in which basket, and baskets checked in by count. */
final class WashCommands {
  private WashCommands() {}

  static List<Command> all(Equipment equipment) {
    return List.of(
        new JobCommand(
            Usage.of("wash list", "", "Lists what is off for washing, by basket.", Option.JOB),
            (bench, call, answer) -> list(bench, answer),
            equipment),
        new JobCommand(
            Usage.of(
                "wash count",
                "",
                "Checks a whole basket in by count; a wrong count is stopped.",
                Option.JOB,
                Option.needed("--basket", "N", "the basket's number"),
                Option.needed("--pieces", "N", "how many pieces were counted")),
            WashCommands::count,
            equipment));
  }

  private static Status list(Bench bench, Answer answer) {
    for (Washing.Basket basket : new Washing(bench.job()).baskets()) {
      for (PartRecord part : basket.parts()) {
        String digits = bench.book().of(part.part()).digits();
        answer.row(
            Fields.of("basket", basket.number())
                .and("code", digits)
                .and("part", part.part().words())
                .and("pieces", part.part().pieces()),
            Answer.cells(
                "basket " + basket.number(),
                digits,
                part.part().words(),
                Integer.toString(part.part().pieces())));
      }
    }
    return Status.RIGHT;
  }

  private static Status count(Bench bench, Call call, Answer answer) throws BadInput {
    Washing.Answer came =
        new Washing(bench.job())
            .backByCount(
                call.number("--basket", 0, 1, TagCode.MOST_ITEM),
                call.number("--pieces", 0, 0, TagCode.MOST_ITEM));
    boolean back = came instanceof Washing.Answer.Back;
    answer.only(Fields.of("back", back).and("sentence", came.sentence()), came.sentence());
    return Status.stoppedIf(!back);
  }
}
