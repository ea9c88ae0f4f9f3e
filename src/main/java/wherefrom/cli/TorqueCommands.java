package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import wherefrom.job.Caution;
import wherefrom.job.ports.Equipment;
import wherefrom.job.entry.TorqueCardBegun;
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
      Option.flag("--out-of-turn", "it was done all the same: it counts, with a mark");

  private final Equipment equipment;

  private TorqueCommands(Equipment equipment) {
    this.equipment = equipment;
  }

  static List<Command> all(Equipment equipment) {
    TorqueCommands torque = new TorqueCommands(equipment);
    return List.of(
        torque.fresh(), torque.list(), torque.show(), torque.tick(), torque.undo(), torque.drop());
  }

  private Command fresh() {
    return Command.of(
            "torque new",
            "",
            "Writes a torque card; the figures are your engine's, none is known here.",
            Option.JOB,
            Option.needed("--fastener", "TEXT", "which bolts, such as \"head bolts, left\""),
            Option.needed("--rows", "N", "rows of bolts, as drawn"),
            Option.needed("--columns", "N", "bolts in a row"),
            ORDER,
            ORDER_FROM,
            Option.needed("--threads", "TEXT", "dry, oiled, sealer…: as the figures hold for"),
            new Option("--stage", "FIGURE", "30N·m, 45lb·ft or 90deg, in order", true, true),
            Option.needed("--source", "TEXT", "where the figures come from, with the page"))
        .noting(
            "Without --order: from the centre outward, which is common practice, no source.",
            Caution.TORQUE.sentence() + " Source: " + Caution.TORQUE.source() + ".")
        .onJob(
            equipment,
            (bench, call, answer) -> said(new TorqueBook(bench.job()).begin(typed(call)), answer));
  }

  private static TorqueCardBegun typed(Call call) throws BadInput {
    int rows = call.number("--rows", 1, 1, BoltPattern.MOST_ROWS);
    int columns = call.number("--columns", 1, 1, BoltPattern.MOST_COLUMNS);
    boolean own = call.has(ORDER);
    String orderFrom = call.find(ORDER_FROM).orElse("").strip();
    if (own == orderFrom.isEmpty()) {
      throw call.wrong("--order and --order-from belong together: say where the order comes from.");
    }
    List<Integer> order =
        own ? order(call) : BoltPattern.ofRectangle(rows, columns).positions();
    return new TorqueCardBegun(
        0,
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
        throw call.wrong("--order: \"" + position + "\" is no position: give numbers from 1.");
      }
    }
    return order;
  }

  private record CardRow(
      int card,
      String fastener,
      String threads,
      List<String> stages,
      int bolts,
      boolean holds,
      boolean tightened,
      boolean checked,
      String state,
      String next,
      String source,
      String orderFrom)
      implements Row {
    static CardRow of(KeptCard kept) {
      TorqueSpec spec = kept.card().spec();
      return new CardRow(
          kept.number(),
          spec.fastener(),
          spec.threads(),
          spec.stages().stream().map(stage -> stage.words()).toList(),
          kept.card().bolts(),
          kept.holds(),
          kept.isTightened(),
          kept.isDone(),
          kept.state(),
          kept.card().next().sentence(),
          spec.source().text(),
          spec.pattern().source().text());
    }

    @Override
    public String text() {
      return Answer.cells(card, fastener, state);
    }
  }

  private Command list() {
    return Command.of("torque list", "", "Lists the cards: number, bolts, how far.", Option.JOB)
        .lists(
            equipment,
            (bench, call) -> new TorqueBook(bench.job()).cards().stream().map(CardRow::of));
  }

  private record TickRow(
      int stage, boolean check, int bolt, String person, boolean outOfTurn, String time) {
    static TickRow of(KeptCard kept, int at) {
      Tick tick = kept.card().ticks().get(at);
      boolean check = tick.stage() == kept.card().checkStage();
      String time = kept.marks().get(at).time().toString();
      return new TickRow(
          tick.stage(), check, tick.bolt(), tick.person(), tick.outOfTurn(), time);
    }
  }

  private record WholeCard(CardRow card, List<TickRow> ticks, Row.Beside stages) implements Row {
    static WholeCard of(KeptCard kept) {
      return new WholeCard(
          CardRow.of(kept),
          IntStream.range(0, kept.marks().size()).mapToObj(at -> TickRow.of(kept, at)).toList(),
          new Row.Beside(String.join("\n", stageLines(kept.card()))));
    }

    @Override
    public String text() {
      String sources = "source\t" + card.source() + "\torder\t" + card.orderFrom();
      return String.join("\n", card.next(), stages.text(), sources);
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

  private Command show() {
    return Command.of(
            "torque show",
            "",
            "Shows a card: what comes next, then each stage with its bolts.",
            Option.JOB,
            CARD)
        .tells(equipment, (bench, call) -> WholeCard.of(card(bench, call)));
  }

  private static int number(Call call) throws BadInput {
    return call.number("--card", 0, 1, MOST);
  }

  private static KeptCard card(Bench bench, Call call) throws BadInput {
    int number = number(call);
    return new TorqueBook(bench.job())
        .find(number)
        .orElseThrow(() -> new BadInput("There is no torque card " + number + "."));
  }

  private Command tick() {
    return Command.of(
            "torque tick",
            "",
            "Ticks a bolt: tightened, or checked by a second person when all are tightened.",
            Option.JOB,
            CARD,
            Option.maybe("--bolt", "N", "its number; without it the bolt in turn"),
            Option.needed("--person", "NAME", "who did it: name or initials"),
            OUT_OF_TURN)
        .noting("A bolt that is not the next one is questioned: exit status 1, no tick.")
        .onJob(equipment, TorqueCommands::tick);
  }

  private static Status tick(Bench bench, Call call, Answer answer) throws BadInput {
    int due = card(bench, call).card().findDue("").map(Tick::bolt).orElse(1);
    int bolt = call.number("--bolt", due, 1, MOST);
    TorqueBook book = new TorqueBook(bench.job());
    return said(
        book.tick(number(call), bolt, call.get("--person"), call.has(OUT_OF_TURN)), answer);
  }

  private Command undo() {
    return Command.of("torque undo", "", "Takes the card's last tick back.", Option.JOB, CARD)
        .onJob(
            equipment,
            (bench, call, answer) ->
                said(new TorqueBook(bench.job()).takeBack(number(call)), answer));
  }

  private Command drop() {
    return Command.of(
            "torque drop",
            "",
            "Gives a card up, as after the bolts were loosened; it stays in the record.",
            Option.JOB,
            CARD,
            Option.REASON)
        .onJob(
            equipment,
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
    if (step instanceof TorqueStep.Refused refused) {
      throw new BadInput(refused.sentence());
    }
    if (step instanceof TorqueStep.Questioned questioned) {
      CardRow card = CardRow.of(questioned.card());
      answer.only(new StepRow(card, true, questioned.question().sentence()));
      return Status.STOPPED;
    }
    TorqueStep.Done done = (TorqueStep.Done) step;
    return answer.only(new StepRow(CardRow.of(done.card()), false, done.sentence()));
  }
}
