package wherefrom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wherefrom.files.TableFile;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.CostState;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.money.MoneyCsv;
import wherefrom.quantity.HomeCountry;
import wherefrom.quantity.JobCurrency;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;

/** The budget, cost lines, prices, and tables of them. */
final class MoneyCommands {
  private static final int MOST = 9999;
  private static final String STATES = "quoted|committed|paid|avoided";
  private static final Option STATE = Option.needed("--state", STATES, "how far it has gone");
  private static final Option AMOUNT = Option.needed("--amount", "12.50", "the amount");
  private static final Option LINE = Option.needed("--line", "N", "its number");

  private MoneyCommands() {}

  static List<Command> all() {
    return List.of(list(), note(), move(), drop(), budget(), price(), effect(), out(), in());
  }

  private static Command list() {
    return Command.of("money list", "Lists the cost lines and where the budget is.")
        .tells((bench, call) -> MoneyRows.Book.of(new MoneyBook(bench.job())));
  }

  private static Command note() {
    return Command.of(
            "money note",
            "Notes a cost line, or notes one again under its number.",
            Option.needed("--what", "TEXT", "what it is for"),
            STATE,
            AMOUNT,
            Option.maybe("--line", "N", "the line to note again"),
            Option.maybe("--about", "KIND", "the kind of part or the subject that it is for"),
            Option.maybe("--plan", "N", "the plan that it belongs to"),
            Option.maybe("--note", "TEXT", "what else to know"))
        .tells(MoneyCommands::note);
  }

  private static Row note(OpenedJob bench, Call call) throws BadInput {
    MoneyBook book = new MoneyBook(bench.job());
    CostState state = state(call);
    int line = call.number("--line", 0, 1, MOST);
    int plan = call.number("--plan", 0, 1, MOST);
    String what = call.get("--what");
    String about = call.text("--about");
    String amount = call.get(AMOUNT);
    String note = call.text("--note");
    return said(
        book.begin(here(bench), () -> book.note(line, what, about, state, amount, plan, note)));
  }

  private static Locale here(OpenedJob bench) {
    return HomeCountry.of(Locale.getDefault(), bench.state().units());
  }

  private static CostState state(Call call) throws BadInput {
    String word = call.get(STATE);
    return Arrays.stream(CostState.values())
        .filter(state -> state.name().equalsIgnoreCase(word))
        .findFirst()
        .orElseThrow(
            () ->
                call.wrong("--state: \"" + word + "\" is not known. Use one of: " + STATES + "."));
  }

  private static Command move() {
    return Command.of("money move", "Moves a cost line on, as from quoted to paid.", LINE, STATE)
        .tells(
            (bench, call) ->
                said(
                    new MoneyBook(bench.job())
                        .move(call.number("--line", 0, 1, MOST), state(call))));
  }

  private static Command drop() {
    return Command.of("money drop", "Strikes a cost line out.", LINE, Option.REASON)
        .tells(
            (bench, call) ->
                said(
                    new MoneyBook(bench.job())
                        .drop(call.number("--line", 0, 1, MOST), call.get(Option.REASON))));
  }

  private static Command budget() {
    return Command.of(
            "money budget",
            "Sets the budget, and what is set aside for surprises.",
            AMOUNT,
            Option.maybe("--contingency", "PERCENT", "of all costs, 15 where not given"),
            Option.maybe("--currency", "EUR", "by ISO 4217; else your country's"))
        .tells(
            (bench, call) -> {
              MoneyBook book = new MoneyBook(bench.job());
              String usual = book.tender(here(bench)).letters();
              int percent = call.number("--contingency", MoneyBook.CONTINGENCY, 0, 100);
              String currency = call.find("--currency").orElse(usual);
              return said(book.setBudget(call.get(AMOUNT), percent, currency));
            });
  }

  private static Command price() {
    return Command.of(
            "money price",
            "Keeps the price of one piece, for plans and decisions; without --what lists them.",
            Option.maybe("--what", "TEXT", "a kind's plural, such as lifters, or a thing to buy"),
            Option.maybe("--amount", "12.50", "the price of one"))
        .onJob(MoneyCommands::price);
  }

  private static Status price(OpenedJob bench, Call call, Answer answer) throws BadInput {
    MoneyBook book = new MoneyBook(bench.job());
    Optional<String> what = call.find("--what");
    if (what.isPresent()) {
      String amount = call.get(AMOUNT);
      return answer.only(
          said(book.begin(here(bench), () -> book.setPrice(Article.read(what.get()), amount))));
    }
    JobCurrency tender = book.tender(here(bench));
    book.prices()
        .forEach((name, price) -> answer.row(new MoneyRows.Price(name.words(), price, tender)));
    return Status.RIGHT;
  }

  private static Row said(MoneyBook.Answer came) throws BadInput {
    if (came instanceof MoneyBook.Answer.Refused refused) {
      throw new BadInput(refused.sentence());
    }
    return MoneyRows.Standing.of(((MoneyBook.Answer.Kept) came).budget());
  }

  private static Command effect() {
    List<ChangeKind> kinds =
        Arrays.stream(ChangeKind.values())
            .filter(kind -> kind.origin() == ChangeKind.Origin.WORK)
            .toList();
    return Command.of(
            "money effect",
            "Tells what a change would cost with all that it asks for; nothing is recorded.",
            Option.needed("--change", "CHANGE", "one of those below"),
            Option.maybe("--where", "BANK|SPOT", "where, if not on the whole engine"))
        .noting("Changes: " + Names.all(kinds) + ".")
        .tells(MoneyCommands::effect);
  }

  private static Row effect(OpenedJob bench, Call call) throws BadInput {
    String wanted = call.get("--change");
    ChangeKind kind =
        Arrays.stream(ChangeKind.values())
            .filter(each -> Names.of(each).equals(wanted))
            .findFirst()
            .orElseThrow(() -> new BadInput("There is no change \"" + wanted + "\": see --help."));
    Change change = Change.at(kind, call.text("--where"));
    Optional<String> fault = new Planning(bench.job()).findWrong(change);
    if (fault.isPresent()) {
      throw new BadInput(fault.get());
    }
    return MoneyRows.Effect.of(new MoneyBook(bench.job()).effect(change));
  }

  private static Command out() {
    return Command.of(
            "money export",
            "Writes the cost lines as comma-separated values.",
            Option.needed("--out", "F.csv", "where to write; - for standard output"),
            Outlet.REPLACE)
        .onJob(
            (bench, call, answer) -> {
              Outlet outlet = Outlet.get(call, "--out", answer);
              byte[] table = new MoneyCsv(bench.job()).write().getBytes(StandardCharsets.UTF_8);
              outlet.write(out -> out.write(table));
              int lines = new MoneyBook(bench.job()).lines().size();
              return answer.only(new MoneyRows.Table(outlet.name(), lines));
            });
  }

  private static Command in() {
    return Command.of(
            "money import",
            "Adds the cost lines of a table. A wrong row is named, and nothing is added.")
        .takes("F.csv")
        .noting("First row: what,about,state,amount,note,currency.")
        .tells(MoneyCommands::in);
  }

  private static Row in(OpenedJob bench, Call call) throws BadInput, IOException {
    Path file = call.path("F.csv", call.operand("Give one file."));
    MoneyBook book = new MoneyBook(bench.job());
    int before = book.lines().size();
    Optional<String> fault = new MoneyCsv(bench.job()).read(TableFile.read(file));
    if (fault.isPresent()) {
      throw new BadInput(file + ": " + fault.get());
    }
    MoneyRows.Standing now = MoneyRows.Standing.of(book.budget());
    return new MoneyRows.Added(now, book.lines().size() - before);
  }
}
