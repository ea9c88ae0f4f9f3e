package wherefrom.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.job.FigureParser;
import wherefrom.job.entry.GoodsWay;
import wherefrom.job.money.BuyLine;
import wherefrom.job.money.Buying;
import wherefrom.job.money.GasketSet;
import wherefrom.job.money.Gauging;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.money.OneMeasured;
import wherefrom.job.money.PartNumbers;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.HomeCountry;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.size.GoodsSize;
import wherefrom.workings.catalogue.accept.Acceptance.Ruling;

/** The list as it is bought: sets and spares, offers of suppliers, what has arrived. */
final class BuyCommands {
  private static final int MOST = 999;
  private static final Option WHAT =
      Option.needed("--what", "TEXT", "a thing of the list, such as \"rod shells\"");

  private static final List<String> OF_A_READING =
      List.of("--reading", "--standard", "--tolerance", "--tool");

  private BuyCommands() {}

  static List<Command> all() {
    return List.of(list(), offer(), compare(), number(), set(), arrived());
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
            Option.maybe("--what", "TEXT", "a thing of the list, such as \"rod shells\""),
            Option.maybe("--number", "TEXT", "instead: the number on its box"),
            Option.maybe("--size", "TEXT", "which size, where the list has several"),
            Option.needed("--pieces", "N", "how many came"),
            Option.maybe("--measured", "TEXT", "the size found on one of them, in words"),
            Option.maybe("--by", "WAY", "measured: wall, inside, diameter, thickness, length"),
            Option.maybe("--reading", "0.0775in", "what one of them measures there"),
            Option.maybe("--standard", "0.0725in", "what a standard one measures, or it must"),
            Option.maybe("--tolerance", "0.0005in", "by how much it may differ"),
            Option.maybe(
                "--tool", "NAME", "measured with; else a caliper, a ball micrometer on a wall"),
            Option.maybe("--right", "yes|no", "whether it is what was asked for, if not measured"))
        .tells(BuyCommands::arrived);
  }

  private static Row arrived(OpenedJob bench, Call call) throws BadInput {
    BuyLine line = line(bench, call);
    int pieces = call.number("--pieces", 0, 1, MOST);
    requireWhole(call);
    if (call.find("--by").isPresent()) {
      return gauged(bench, call, line, pieces);
    }
    boolean right = isRight(call);
    Optional<String> fault =
        Buying.arrive(bench.job(), line, pieces, call.text("--measured"), right);
    return told(bench, fault, line, right, "");
  }

  /** What belongs together is given together: nothing that was typed is left aside. */
  private static void requireWhole(Call call) throws BadInput {
    boolean by = call.find("--by").isPresent();
    if (!by && OF_A_READING.stream().anyMatch(option -> call.find(option).isPresent())) {
      throw call.wrong("Give --by with --reading, --standard, --tolerance and --tool.");
    }
    if (by && call.find("--measured").isPresent()) {
      throw call.wrong("Give --measured, or --by with --reading, not both.");
    }
  }

  private static Row told(
      OpenedJob bench, Optional<String> fault, BuyLine line, boolean right, String before)
      throws BadInput {
    if (fault.isPresent()) {
      throw new BadInput(fault.get());
    }
    return new BuyRows.Told(before + new Buying(bench.state()).told(line, right));
  }

  /** What is undecided counts only where the person says that it is right; a no always holds. */
  private static Row gauged(OpenedJob bench, Call call, BuyLine line, int pieces) throws BadInput {
    GoodsWay way =
        GoodsWay.find(call.get("--by"))
            .orElseThrow(
                () -> call.wrong("--by: say wall, inside, diameter, thickness or length."));
    Gauging.Typed typed =
        new Gauging.Typed(
            way,
            call.get("--reading"),
            call.get("--standard"),
            call.text("--tolerance"),
            call.text("--tool"));
    Gauging.Outcome outcome = new Gauging(bench.state(), line).judge(typed);
    if (outcome instanceof Gauging.Outcome.Refused refused) {
      throw new BadInput(refused.sentence());
    }
    OneMeasured one = ((Gauging.Outcome.Judged) outcome).one();
    if (one.ruling() == Ruling.UNDECIDED && call.find("--right").isEmpty()) {
      throw new BadInput(one.sentence() + " Or say --right yes or no.");
    }
    boolean said = call.find("--right").isEmpty() || isRight(call);
    boolean right = said && one.ruling() != Ruling.REJECT;
    Optional<String> fault = Buying.arrive(bench.job(), line, pieces, one, right);
    return told(bench, fault, line, right, one.sentence() + " ");
  }

  private static boolean isRight(Call call) throws BadInput {
    return switch (call.get("--right")) {
      case "yes" -> true;
      case "no" -> false;
      default -> throw call.wrong("--right: say yes or no.");
    };
  }

  private static Command number() {
    return Command.of(
            "buy number",
            "Keeps the number on the box of a thing of the list.",
            WHAT,
            Option.maybe("--size", "TEXT", "which size, where the list has several"),
            Option.needed("--number", "TEXT", "as it is printed, or as a scanner reads it"))
        .tells(
            (bench, call) -> {
              BuyLine line = listed(bench, call);
              Optional<String> fault = PartNumbers.keep(bench.job(), line, call.get("--number"));
              if (fault.isPresent()) {
                throw new BadInput(fault.get());
              }
              return new BuyRows.Told(line.words() + ": number " + call.get("--number") + ".");
            });
  }

  private static Command set() {
    return Command.of(
            "buy set",
            "Says what the gasket set holds; without --what, lists it.",
            Option.maybe("--what", "TEXT", "a single gasket or seal"),
            Option.maybe("--holds", "N", "how many of it, 0 for none"))
        .lists(BuyCommands::set);
  }

  private static Stream<BuyRows.InSet> set(OpenedJob bench, Call call) throws BadInput {
    if (call.find("--what").isEmpty() && call.find("--holds").isPresent()) {
      throw call.wrong("--holds: say of what with --what.");
    }
    if (call.find("--what").isPresent()) {
      Article what = Article.read(call.get("--what"));
      boolean known =
          GasketSet.of(bench.state()).candidates().stream()
              .anyMatch(one -> one.article().equals(what));
      if (!known) {
        throw new BadInput("No such gasket is asked for. See \"buy set\".");
      }
      call.get("--holds");
      GasketSet.tick(bench.job(), what, call.number("--holds", 0, 0, MOST));
    }
    GasketSet set = GasketSet.of(bench.state());
    return set.candidates().stream().map(one -> new BuyRows.InSet(one, set.holds(one.article())));
  }

  private static BuyLine line(OpenedJob bench, Call call) throws BadInput {
    if (call.find("--number").isEmpty()) {
      return listed(bench, call);
    }
    String number = call.get("--number");
    return PartNumbers.find(bench.state(), number)
        .orElseThrow(() -> new BadInput(PartNumbers.unknown(bench.state(), number)));
  }

  /** Whether it is of the size that is asked for; of any where none is. */
  private static boolean isOfSize(OpenedJob bench, Call call, BuyLine line) {
    Unit usual = FigureParser.usual(bench.state().units(), Dimension.LENGTH);
    return call.find("--size")
        .map(typed -> GoodsSize.read(typed, usual).filter(line.size()::equals).isPresent())
        .orElse(true);
  }

  /** Of several lines of one size, the first that wants more. */
  private static BuyLine listed(OpenedJob bench, Call call) throws BadInput {
    Article what = Article.read(call.get("--what"));
    List<BuyLine> found =
        new Buying(bench.state())
            .find(what).stream().filter(line -> isOfSize(bench, call, line)).toList();
    if (found.isEmpty()) {
      throw new BadInput("That is not on the list. See \"buy list\".");
    }
    if (found.stream().map(BuyLine::size).distinct().count() > 1) {
      throw new BadInput("The list has several sizes of it. Say which with --size.");
    }
    return found.stream().filter(one -> one.open() > 0).findFirst().orElse(found.get(0));
  }
}
