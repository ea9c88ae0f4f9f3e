package wherefrom.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wherefrom.job.money.BuyLine;
import wherefrom.job.money.Buying;
import wherefrom.job.money.MoneyBook;
import wherefrom.quantity.HomeCountry;
import wherefrom.rules.consequence.Article;

/** The list as it is bought: sets and spares, offers of suppliers, what has arrived. */
final class BuyCommands {
  private static final int MOST = 999;
  private static final Option WHAT =
      Option.needed("--what", "TEXT", "a thing of the list, such as \"rod shells\"");

  private BuyCommands() {}

  static List<Command> all() {
    return List.of(list(), offer(), compare(), arrived());
  }

  private static Command list() {
    return Command.of("buy list", "Lists what to buy: size, set, spares, and what is here.")
        .lists((bench, call) -> new Buying(bench.state()).lines().stream().map(BuyRows.Line::new));
  }

  private static Command offer() {
    return Command.of(
            "buy offer",
            "Keeps what a supplier asks for a package of something.",
            Option.needed("--supplier", "TEXT", "who offers it"),
            WHAT,
            Option.needed("--amount", "12.50", "the price of one package"),
            Option.maybe("--holds", "N", "pieces in a package, 1 where not given"))
        .tells(BuyCommands::offer);
  }

  private static Row offer(OpenedJob bench, Call call) throws BadInput {
    MoneyBook book = new MoneyBook(bench.job());
    Locale here = HomeCountry.of(Locale.getDefault(), bench.state().units());
    String supplier = call.get("--supplier");
    Article what = Article.read(call.get("--what"));
    int holds = call.number("--holds", 1, 1, MOST);
    String amount = call.get("--amount");
    MoneyBook.Answer came =
        book.begin(here, () -> Buying.offer(bench.job(), supplier, what, holds, amount));
    if (came instanceof MoneyBook.Answer.Refused refused) {
      throw new BadInput(refused.sentence());
    }
    String price = supplier + ": " + holds + " " + what.words() + ", " + amount + ".";
    return new BuyRows.Told(price);
  }

  private static Command compare() {
    return Command.of(
            "buy compare",
            "Sets offers side by side: sums, and what each lacks.",
            Option.maybe("--supplier", "TEXT", "only this one"))
        .lists(
            (bench, call) -> {
              Optional<String> only = call.find("--supplier");
              MoneyBook book = new MoneyBook(bench.job());
              return new Buying(bench.state())
                  .offers().stream()
                      .filter(one -> only.map(one.supplier()::equalsIgnoreCase).orElse(true))
                      .map(one -> new BuyRows.Offer(one, book.budget()));
            });
  }

  private static Command arrived() {
    return Command.of(
            "buy arrived",
            "Checks in what came; one of a size is measured first.",
            WHAT,
            Option.maybe("--size", "TEXT", "which size, where the list has several"),
            Option.needed("--pieces", "N", "how many came"),
            Option.maybe("--measured", "TEXT", "the size found on one of them"),
            Option.needed("--right", "yes|no", "whether it is what was asked for"))
        .tells(BuyCommands::arrived);
  }

  private static Row arrived(OpenedJob bench, Call call) throws BadInput {
    BuyLine line = line(bench, call);
    boolean right = isRight(call);
    int pieces = call.number("--pieces", 0, 1, MOST);
    Optional<String> fault =
        Buying.arrive(bench.job(), line, pieces, call.text("--measured"), right);
    if (fault.isPresent()) {
      throw new BadInput(fault.get());
    }
    return new BuyRows.Told(new Buying(bench.state()).told(line, right));
  }

  private static boolean isRight(Call call) throws BadInput {
    return switch (call.get("--right")) {
      case "yes" -> true;
      case "no" -> false;
      default -> throw call.wrong("--right: say yes or no.");
    };
  }

  private static BuyLine line(OpenedJob bench, Call call) throws BadInput {
    List<BuyLine> found =
        new Buying(bench.state()).find(Article.read(call.get("--what")), call.find("--size"));
    if (found.isEmpty()) {
      throw new BadInput("That is not on the list. See \"buy list\".");
    }
    if (found.size() > 1) {
      throw new BadInput("The list has several sizes of it. Say which with --size.");
    }
    return found.get(0);
  }
}
