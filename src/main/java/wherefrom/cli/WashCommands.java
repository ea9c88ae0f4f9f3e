package wherefrom.cli;

import java.util.List;
import java.util.Optional;
import wherefrom.job.shop.Washing;
import wherefrom.parts.Part;
import wherefrom.parts.TagCode;

/** Parts off for washing, what lies in which basket, and baskets checked in by count. */
final class WashCommands {
  private WashCommands() {}

  static List<Command> all() {
    return List.of(
        PartCommands.wash(),
        Command.of("wash list", "Lists what is off for washing, by basket.")
            .lists(
                (bench, call) ->
                    new Washing(bench.job())
                        .baskets().stream()
                            .flatMap(
                                basket ->
                                    basket.parts().stream()
                                        .map(part -> BasketRow.of(bench, basket, part.part())))),
        Command.of(
                "wash count",
                "Counts a whole basket back in; a wrong count is stopped.",
                Option.needed("--basket", "N", "the basket's number"),
                Option.needed("--pieces", "N", "how many pieces were counted"),
                Option.maybe("--tags", "on|off", "whether the tags stayed on in the wash"))
            .noting(
                "A count tells that all came back, not which is which: where parts of a kind"
                    + " lay together, say --tags on. With --tags off those stay in the basket"
                    + " until \"retag\" has told them.")
            .onJob(WashCommands::count));
  }

  private record BasketRow(int basket, String code, String part, int pieces) implements Row {
    static BasketRow of(OpenedJob bench, Washing.Basket basket, Part part) {
      return new BasketRow(basket.number(), bench.digits(part), part.words(), part.pieces());
    }

    @Override
    public String text() {
      return Answer.cells("basket " + basket, code, part, pieces);
    }
  }

  private record CountRow(boolean back, String sentence) implements Row {
    @Override
    public String text() {
      return sentence;
    }
  }

  private static Status count(OpenedJob bench, Call call, Answer answer) throws BadInput {
    Washing.Answer came =
        new Washing(bench.job())
            .backByCount(
                call.number("--basket", 0, 1, TagCode.MOST_ITEM),
                call.number("--pieces", 0, 0, TagCode.MOST_ITEM),
                tags(call));
    boolean back = came.match(all -> true, asked -> false, refused -> false);
    String next = came.match(all -> "", asked -> " Say --tags on, or --tags off.", refused -> "");
    answer.only(new CountRow(back, came.sentence() + next));
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
