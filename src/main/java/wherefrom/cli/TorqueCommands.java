package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import wherefrom.job.Caution;
import wherefrom.job.Days;
import wherefrom.job.torque.CardTyped;
import wherefrom.job.torque.KeptCard;
import wherefrom.job.torque.TorqueBook;
import wherefrom.job.torque.TorqueStep;
import wherefrom.workings.torque.BoltPattern;
import wherefrom.workings.torque.Tick;
import wherefrom.workings.torque.TorqueCard;
import wherefrom.workings.torque.TorqueSpec;

/** Torque cards: written, ticked bolt by bolt, checked by a second person. */
final class TorqueCommands {
  private static final int MOST = 9999;
  private static final Option CARD = Option.needed("--card", "N", "the card's number");
  private static final Option ORDER =
      Option.several(
          "--order",
          "POSITION",
          "positions in your own order, counted row by row from 1 at the top left; one left out"
              + " holds no bolt");
  private static final Option ORDER_FROM =
      Option.maybe("--order-from", "TEXT", "where your own order comes from");
  private static final Option OUT_OF_TURN =
      Option.flag("--out-of-turn", "it was done anyway: it counts, with a mark");

  private TorqueCommands() {}

  static List<Command> all() {
    return List.of(fresh(), list(), show(), tick(), undo(), drop());
  }

  private static Command fresh() {
    return Command.of(
            "torque new",
            "Writes a torque card. Wherefrom has no figures of its own.",
            Option.needed("--fastener", "TEXT", "which bolts, such as \"head bolts, left\""),
            Option.needed("--rows", "N", "rows of bolts, as drawn"),
            Option.needed("--columns", "N", "bolts in a row"),
            ORDER,
            ORDER_FROM,
            Option.needed("--threads", "TEXT", "dry, oiled, sealer…: as the figures hold for"),
            new Option(
                "--stage",
                "FIGURE",
                "30N·m, 45lb·ft, 90deg or \"loosen 90deg\", in order",
                true,
                true),
            Option.needed("--source", "TEXT", "where the figures come from, with the page"))
        .noting(
            "Without --order: from the center outward, which is common practice, no source.",
            Caution.TORQUE.sentence() + " Source: " + Caution.TORQUE.source() + ".")
        .onJob(
            (bench, call, answer) -> said(new TorqueBook(bench.job()).begin(typed(call)), answer));
  }

  private static CardTyped typed(Call call) throws BadInput {
    int rows = call.number("--rows", 1, 1, BoltPattern.MOST_ROWS);
    int columns = call.number("--columns", 1, 1, BoltPattern.MOST_COLUMNS);
    boolean own = call.has(ORDER);
    String orderFrom = call.find(ORDER_FROM).orElse("").strip();
    if (own == orderFrom.isEmpty()) {
      throw call.wrong("--order and --order-from belong together: say where the order comes from.");
    }
    List<Integer> order = own ? order(call) : BoltPattern.ofRectangle(rows, columns).positions();
    return new CardTyped(
        call.get("--fastener").strip(),
        rows,
        columns,
        order,
        orderFrom,
        call.get("--threads").strip(),
        call.all("--stage"),
        call.get("--source").strip());
  }

  private static List<Integer> order(Call call) throws BadInput {
    List<Integer> order = new ArrayList<>();
    for (String position : call.listed("--order")) {
      try {
        order.add(Integer.valueOf(position));
      } catch (NumberFormatException e) {
        throw call.wrong("--order: \"" + position + "\" is not a position: give numbers from 1.");
      }
    }
    return order;
  }

  private record CardRow(KeptCard kept) implements Row {
    @Override
    public String text() {
      return Answer.cells(kept.number(), kept.card().spec().fastener(), kept.state());
    }

    @Override
    public Map<String, Object> fields() {
      TorqueSpec spec = kept.card().spec();
      return Json.object(
          "card", kept.number(),
          "fastener", spec.fastener(),
          "threads", spec.threads(),
          "stages", spec.stages().stream().map(stage -> stage.words()).toList(),
          "bolts", kept.card().bolts(),
          "holds", kept.holds(),
          "tightened", kept.isTightened(),
          "checked", kept.isDone(),
          "state", kept.state(),
          "next", kept.card().next().sentence(),
          "source", spec.source().text(),
          "orderFrom", spec.pattern().source().text());
    }
  }

  private static Command list() {
    return Command.of("torque list", "Lists the cards: number, bolts, how far.")
        .lists((bench, call) -> new TorqueBook(bench.job()).cards().stream().map(CardRow::new));
  }

  private record TickRow(
      int stage, boolean check, int bolt, String person, boolean outOfTurn, String time) {
    static TickRow of(KeptCard kept, int at, Days days) {
      Tick tick = kept.card().ticks().get(at);
      boolean check = tick.stage() == kept.card().checkStage();
      String time = days.stamp(kept.marks().get(at).time());
      return new TickRow(tick.stage(), check, tick.bolt(), tick.person(), tick.outOfTurn(), time);
    }
  }

  private record WholeCard(CardRow card, List<TickRow> ticks) implements Row {
    static WholeCard of(KeptCard kept, Days days) {
      int marks = kept.marks().size();
      return new WholeCard(
          new CardRow(kept),
          IntStream.range(0, marks).mapToObj(at -> TickRow.of(kept, at, days)).toList());
    }

    @Override
    public String text() {
      TorqueCard whole = card.kept().card();
      List<String> lines = new ArrayList<>(List.of(whole.next().sentence()));
      lines.addAll(stageLines(whole));
      TorqueSpec spec = whole.spec();
      String order = spec.pattern().source().text();
      lines.add("source\t" + spec.source().text() + "\torder\t" + order);
      return Row.lines(lines);
    }
  }

  private static List<String> stageLines(TorqueCard card) {
    List<String> lines = new ArrayList<>();
    for (int stage = 1; stage <= card.checkStage(); stage++) {
      boolean check = stage == card.checkStage();
      lines.add(
          Answer.cells(
              check ? "check" : "stage " + stage,
              check ? "by a second person" : card.spec().stages().get(stage - 1).words(),
              card.boltsDone(stage) + " of " + card.bolts()));
    }
    return lines;
  }

  private static Command show() {
    return Command.of(
            "torque show", "Shows a card: what comes next, then each stage with its bolts.", CARD)
        .tells((bench, call) -> WholeCard.of(card(bench, call), bench.job().days()));
  }

  private static int number(Call call) throws BadInput {
    return call.number("--card", 0, 1, MOST);
  }

  private static KeptCard card(OpenedJob bench, Call call) throws BadInput {
    int number = number(call);
    return new TorqueBook(bench.job())
        .find(number)
        .orElseThrow(() -> new BadInput("There is no torque card " + number + "."));
  }

  private static Command tick() {
    return Command.of(
            "torque tick",
            "Ticks a bolt: tightened, or checked by a second person when all are tightened.",
            CARD,
            Option.maybe("--bolt", "N", "its number; without it the bolt in turn"),
            Option.needed("--person", "NAME", "who did it: name or initials"),
            OUT_OF_TURN)
        .noting("A bolt that is not the next one is questioned: exit status 1, no tick.")
        .onJob(TorqueCommands::tick);
  }

  private static Status tick(OpenedJob bench, Call call, Answer answer) throws BadInput {
    int due = card(bench, call).card().findDue("").map(Tick::bolt).orElse(1);
    int bolt = call.number("--bolt", due, 1, MOST);
    TorqueBook book = new TorqueBook(bench.job());
    return said(book.tick(number(call), bolt, call.get("--person"), call.has(OUT_OF_TURN)), answer);
  }

  private static Command undo() {
    return Command.of("torque undo", "Undoes the card's last tick.", CARD)
        .onJob(
            (bench, call, answer) ->
                said(new TorqueBook(bench.job()).takeBack(number(call)), answer));
  }

  private static Command drop() {
    return Command.of(
            "torque drop",
            "Drops a card, as after the bolts were loosened; it stays in the record.",
            CARD,
            Option.REASON)
        .onJob(
            (bench, call, answer) ->
                said(
                    new TorqueBook(bench.job()).drop(number(call), call.get(Option.REASON)),
                    answer));
  }

  private record StepRow(CardRow card, boolean questioned, String sentence) implements Row {
    @Override
    public String text() {
      return (questioned ? "Out of turn: " : "") + sentence;
    }
  }

  private static Status said(TorqueStep step, Answer answer) throws BadInput {
    return step.<Ending>match(
            done -> () -> said(done.card(), false, done.sentence(), answer),
            asked -> () -> said(asked.card(), true, asked.question().sentence(), answer),
            refused -> Ending.bad(refused.sentence()))
        .end();
  }

  private static Status said(KeptCard card, boolean questioned, String sentence, Answer answer) {
    answer.only(new StepRow(new CardRow(card), questioned, sentence));
    return Status.stoppedIf(questioned);
  }
}
