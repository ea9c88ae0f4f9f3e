package wherefrom.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wherefrom.files.TableFile;
import wherefrom.job.entry.CostState;
import wherefrom.job.money.Budget;
import wherefrom.job.money.CostItem;
import wherefrom.job.money.CostLine;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.money.MoneyCsv;
import wherefrom.job.ports.Equipment;
import wherefrom.quantity.Tender;

/** The budget, cost lines, prices, and tables of them. */
final class MoneyCommands {
  private static final int MOST = 9999;
  private static final String STATES = "quoted|committed|paid|avoided";
  private static final Option STATE = Option.needed("--state", STATES, "how far it has gone");
  private static final Option AMOUNT = Option.needed("--amount", "12.50", "the amount");

  private final Equipment equipment;

  private MoneyCommands(Equipment equipment) {
    this.equipment = equipment;
  }

  static List<Command> all(Equipment equipment) {
    MoneyCommands money = new MoneyCommands(equipment);
    return List.of(
        money.list(),
        money.note(),
        money.move(),
        money.drop(),
        money.budget(),
        money.price(),
        new MoneyEffect(equipment),
        money.out(),
        money.in());
  }

  private Command command(Usage usage, JobCommand.Deed deed) {
    return new JobCommand(usage, deed, equipment);
  }

  private Command list() {
    return command(
        Usage.of("money list", "", "Lists the cost lines and where the budget is.", Option.JOB),
        (bench, call, answer) -> {
          MoneyBook book = new MoneyBook(bench.job());
          Budget budget = book.budget();
          List<Object> rows = new ArrayList<>();
          List<String> lines = new ArrayList<>();
          for (CostLine line : book.lines()) {
            rows.add(fields(line).all());
            lines.add(
                Answer.cells(
                    Integer.toString(line.number()),
                    line.what(),
                    line.about(),
                    line.state().words(),
                    budget.text(line.amount()),
                    line.note()));
          }
          List<CostItem> toBuy = book.toBuy();
          toBuy.stream()
              .filter(CostItem::priced)
              .forEach(item -> lines.add(Answer.cells("-", item.sentence(), "", "to buy")));
          lines.add(budget.sentence());
          answer.only(
              fields(budget).and("lines", rows).and("items", MoneyEffect.rows(toBuy)), lines);
          return Status.RIGHT;
        });
  }

  private static Fields fields(CostLine line) {
    return Fields.of("line", line.number())
        .and("what", line.what())
        .and("about", line.about())
        .and("state", line.state().name().toLowerCase(Locale.ROOT))
        .and("amount", line.amount().text())
        .and("plan", line.plan())
        .and("note", line.note());
  }

  static Fields fields(Budget budget) {
    return Fields.of("budget", budget.limit().text())
        .and("currency", budget.currency())
        .and("quoted", budget.quoted().text())
        .and("committed", budget.committed().text())
        .and("paid", budget.paid().text())
        .and("avoided", budget.avoided().text())
        .and("planned", budget.planned().text())
        .and("toBuy", budget.toBuy().text())
        .and("contingency", budget.contingency().text())
        .and("total", budget.total().text())
        .and("left", budget.left().text())
        .and("sentence", budget.sentence());
  }

  private Command note() {
    return command(
        Usage.of(
            "money note",
            "",
            "Notes a cost line, or notes one again under its number.",
            Option.JOB,
            Option.needed("--what", "TEXT", "what it is for"),
            STATE,
            AMOUNT,
            Option.maybe("--line", "N", "the line to note again"),
            Option.maybe("--about", "KIND", "the kind of part or the subject that it is for"),
            Option.maybe("--plan", "N", "the plan that it belongs to"),
            Option.maybe("--note", "TEXT", "what else to know")),
        (bench, call, answer) -> {
          MoneyBook book = new MoneyBook(bench.job());
          CostState state = state(call);
          int line = call.number("--line", 0, 1, MOST);
          int plan = call.number("--plan", 0, 1, MOST);
          String what = call.get("--what");
          String about = call.find("--about").orElse("");
          String amount = call.get("--amount");
          String note = call.find("--note").orElse("");
          return said(
              book.begin(
                  Locale.getDefault(),
                  () -> book.note(line, what, about, state, amount, plan, note)),
              answer);
        });
  }

  private static CostState state(Call call) throws BadInput {
    String word = call.get("--state");
    return Arrays.stream(CostState.values())
        .filter(state -> state.name().equalsIgnoreCase(word))
        .findFirst()
        .orElseThrow(() -> call.wrong("--state: \"" + word + "\" is none of " + STATES + "."));
  }

  private Command move() {
    return command(
        Usage.of(
            "money move",
            "",
            "Moves a cost line on, as from quoted to paid.",
            Option.JOB,
            Option.needed("--line", "N", "its number"),
            STATE),
        (bench, call, answer) ->
            said(
                new MoneyBook(bench.job()).move(call.number("--line", 0, 1, MOST), state(call)),
                answer));
  }

  private Command drop() {
    return command(
        Usage.of(
            "money drop",
            "",
            "Strikes a cost line out.",
            Option.JOB,
            Option.needed("--line", "N", "its number"),
            Option.REASON),
        (bench, call, answer) ->
            said(
                new MoneyBook(bench.job())
                    .drop(call.number("--line", 0, 1, MOST), call.get("--reason")),
                answer));
  }

  private Command budget() {
    return command(
        Usage.of(
            "money budget",
            "",
            "Sets what may be spent, and what is laid by for what is found later.",
            Option.JOB,
            AMOUNT,
            Option.maybe("--contingency", "PERCENT", "of all costs, 15 where not given"),
            Option.maybe("--currency", "EUR", "by ISO 4217; else your country's")),
        (bench, call, answer) -> {
          MoneyBook book = new MoneyBook(bench.job());
          String currency =
              call.find("--currency").orElseGet(() -> book.tender(Locale.getDefault()).letters());
          int percent = call.number("--contingency", MoneyBook.CONTINGENCY, 0, 100);
          return said(book.setBudget(call.get("--amount"), percent, currency), answer);
        });
  }

  private Command price() {
    return command(
        Usage.of(
            "money price",
            "",
            "Keeps the price of one piece, for plans and decisions; without --what lists them.",
            Option.JOB,
            Option.maybe("--what", "TEXT", "a kind's plural, such as lifters, or a thing to buy"),
            Option.maybe("--amount", "12.50", "the price of one")),
        (bench, call, answer) -> {
          MoneyBook book = new MoneyBook(bench.job());
          Optional<String> what = call.find("--what");
          if (what.isPresent()) {
            String amount = call.get("--amount");
            return said(
                book.begin(Locale.getDefault(), () -> book.setPrice(what.get(), amount)), answer);
          }
          Tender tender = book.tender(Locale.getDefault());
          book.prices()
              .forEach(
                  (name, price) ->
                      answer.row(
                          Fields.of("what", name).and("amount", price.text()),
                          Answer.cells(name, tender.text(price))));
          return Status.RIGHT;
        });
  }

  private static Status said(MoneyBook.Answer came, Answer answer) throws BadInput {
    if (came instanceof MoneyBook.Answer.Refused refused) {
      throw new BadInput(refused.sentence());
    }
    Budget budget = ((MoneyBook.Answer.Kept) came).budget();
    answer.only(fields(budget), budget.sentence());
    return Status.RIGHT;
  }

  private Command out() {
    return command(
        Usage.of(
            "money out",
            "",
            "Writes the cost lines as comma-separated values.",
            Option.JOB,
            Option.needed("--out", "F.csv", "where to write; - for standard output"),
            Outlet.REPLACE),
        (bench, call, answer) -> {
          Outlet outlet = Outlet.get(call, "--out", answer);
          byte[] table = new MoneyCsv(bench.job()).write().getBytes(StandardCharsets.UTF_8);
          outlet.write(out -> out.write(table));
          int lines = new MoneyBook(bench.job()).lines().size();
          answer.only(
              Fields.of("file", outlet.name()).and("lines", lines),
              outlet.name() + ": lines " + lines);
          return Status.RIGHT;
        });
  }

  private Command in() {
    return command(
        Usage.of(
                "money in",
                "F.csv",
                "Adds the cost lines of a table; one wrong row is named, and nothing is added.",
                Option.JOB)
            .noting("First row: what,about,state,amount,note,currency."),
        (bench, call, answer) -> {
          if (call.operands().size() != 1) {
            throw call.wrong("Give one file.");
          }
          Path file = call.path("F.csv", call.operands().get(0));
          MoneyBook book = new MoneyBook(bench.job());
          int before = book.lines().size();
          Optional<String> fault = new MoneyCsv(bench.job()).read(TableFile.read(file));
          if (fault.isPresent()) {
            throw new BadInput(file + ": " + fault.get());
          }
          answer.only(
              fields(book.budget()).and("added", book.lines().size() - before),
              "Lines added: " + (book.lines().size() - before) + ". " + book.budget().sentence());
          return Status.RIGHT;
        });
  }
}
