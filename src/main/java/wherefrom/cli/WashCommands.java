package wherefrom.cli;

import java.util.List;
import java.util.Optional;
import wherefrom.job.PartRecord;
import wherefrom.job.ports.Equipment;
import wherefrom.job.shop.Washing;
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
                    Option.needed("--pieces", "N", "how many pieces were counted"),
                    Option.maybe("--tags", "on|off", "whether the tags stayed on in the wash"))
                .noting(
                    "A count tells that all came back, not which is which: where parts of a kind"
                        + " lay together, say --tags on. With --tags off those stay in the basket"
                        + " until \"retag\" has told them."),
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
                call.number("--pieces", 0, 0, TagCode.MOST_ITEM),
                tags(call));
    boolean back = came instanceof Washing.Answer.Back;
    String next = came instanceof Washing.Answer.Asked ? " Say --tags on, or --tags off." : "";
    String sentence = came.sentence() + next;
    answer.only(Fields.of("back", back).and("sentence", sentence), sentence);
    return Status.stoppedIf(!back);
  }

  private static Optional<Boolean> tags(Call call) throws BadInput {
    Optional<String> said = call.find("--tags");
    if (said.isPresent() && !said.get().equals("on") && !said.get().equals("off")) {
      throw call.wrong("--tags: \"" + said.get() + "\" is neither on nor off.");
    }
    return said.map("on"::equals);
  }
}
