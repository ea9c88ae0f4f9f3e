package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wherefrom.job.Caution;
import wherefrom.job.entry.TorqueCardBegun;
import wherefrom.job.ports.Equipment;
import wherefrom.job.torque.KeptCard;
import wherefrom.job.torque.TorqueBook;
import wherefrom.job.torque.TorqueStep;
import wherefrom.workings.torque.BoltPattern;
import wherefrom.workings.torque.Tick;

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

  private Command command(Usage usage, JobCommand.Deed deed) {
    return new JobCommand(usage, deed, equipment);
  }

  private Command fresh() {
    return command(
        Usage.of(
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
                Caution.TORQUE.sentence() + " Source: " + Caution.TORQUE.source() + "."),
        (bench, call, answer) -> said(new TorqueBook(bench.job()).begin(typed(call)), answer));
  }

  private static TorqueCardBegun typed(Call call) throws BadInput {
    int rows = call.number("--rows", 1, 1, BoltPattern.MOST_ROWS);
    int columns = call.number("--columns", 1, 1, BoltPattern.MOST_COLUMNS);
    boolean own = call.has(ORDER);
    if (own == call.find(ORDER_FROM.name()).filter(words -> !words.isBlank()).isEmpty()) {
      throw call.wrong("--order and --order-from belong together: say where the order comes from.");
    }
    return new TorqueCardBegun(
        0,
        call.get("--fastener").strip(),
        rows,
        columns,
        own ? order(call) : BoltPattern.ofRectangle(rows, columns).positions(),
        call.find(ORDER_FROM.name()).orElse("").strip(),
        call.get("--threads").strip(),
        call.all("--stage"),
        call.get("--source").strip());
  }

  private static List<Integer> order(Call call) throws BadInput {
    List<Integer> order = new ArrayList<>();
    for (String position : call.listed(ORDER.name())) {
      try {
        order.add(Integer.valueOf(position));
      } catch (NumberFormatException e) {
        throw call.wrong("--order: \"" + position + "\" is no position: give numbers from 1.");
      }
    }
    return order;
  }

  private Command list() {
    return command(
        Usage.of("torque list", "", "Lists the cards: number, bolts, how far.", Option.JOB),
        (bench, call, answer) -> {
          for (KeptCard card : new TorqueBook(bench.job()).cards()) {
            answer.row(
                fields(card),
                Answer.cells(
                    Integer.toString(card.number()), card.card().spec().fastener(), card.state()));
          }
          return Status.RIGHT;
        });
  }

  private static Fields fields(KeptCard card) {
    return Fields.of("card", card.number())
        .and("fastener", card.card().spec().fastener())
        .and("threads", card.card().spec().threads())
        .and("stages", card.card().spec().stages().stream().map(stage -> stage.words()).toList())
        .and("bolts", card.card().bolts())
        .and("holds", card.holds())
        .and("tightened", card.isTightened())
        .and("checked", card.isDone())
        .and("state", card.state())
        .and("next", card.card().next().sentence())
        .and("source", card.card().spec().source().text())
        .and("orderFrom", card.card().spec().pattern().source().text());
  }

  private Command show() {
    return command(
        Usage.of(
            "torque show",
            "",
            "Shows a card: what comes next, then each stage with its bolts.",
            Option.JOB,
            CARD),
        (bench, call, answer) -> {
          KeptCard card = card(bench, call);
          List<String> lines = new ArrayList<>(List.of(card.card().next().sentence()));
          lines.addAll(stages(card));
          lines.add(
              "source\t" + card.card().spec().source().text() + "\torder\t" + orderFrom(card));
          Fields fields = fields(card).and("ticks", ticks(card));
          answer.only(fields, lines);
          return Status.RIGHT;
        });
  }

  private static String orderFrom(KeptCard card) {
    return card.card().spec().pattern().source().text();
  }

  private static KeptCard card(Bench bench, Call call) throws BadInput {
    int number = call.number(CARD.name(), 0, 1, MOST);
    return new TorqueBook(bench.job())
        .find(number)
        .orElseThrow(() -> new BadInput("There is no torque card " + number + "."));
  }

  private static List<String> stages(KeptCard card) {
    return IntStream.rangeClosed(1, card.card().checkStage())
        .mapToObj(
            stage ->
                Answer.cells(
                    stage == card.card().checkStage() ? "check" : "stage " + stage,
                    stage == card.card().checkStage()
                        ? "by a second person"
                        : card.card().spec().stages().get(stage - 1).words(),
                    card.card().boltsDone(stage) + " of " + card.card().bolts()))
        .toList();
  }

  private static List<Object> ticks(KeptCard card) {
    List<Object> ticks = new ArrayList<>();
    for (int at = 0; at < card.marks().size(); at++) {
      Tick tick = card.card().ticks().get(at);
      ticks.add(
          Fields.of("stage", tick.stage())
              .and("check", tick.stage() == card.card().checkStage())
              .and("bolt", tick.bolt())
              .and("person", tick.person())
              .and("outOfTurn", tick.outOfTurn())
              .and("time", card.marks().get(at).time().toString())
              .all());
    }
    return ticks;
  }

  private Command tick() {
    return command(
        Usage.of(
                "torque tick",
                "",
                "Ticks a bolt: tightened, or checked by a second person when all are tightened.",
                Option.JOB,
                CARD,
                Option.maybe("--bolt", "N", "its number; without it the bolt in turn"),
                Option.needed("--person", "NAME", "who did it: name or initials"),
                OUT_OF_TURN)
            .noting("A bolt that is not the next one is questioned: exit status 1, no tick."),
        (bench, call, answer) -> {
          Optional<Integer> due = card(bench, call).card().findDue("").map(Tick::bolt);
          return said(
              new TorqueBook(bench.job())
                  .tick(
                      call.number(CARD.name(), 0, 1, MOST),
                      call.number("--bolt", due.orElse(1), 1, MOST),
                      call.get("--person"),
                      call.has(OUT_OF_TURN)),
              answer);
        });
  }

  private Command undo() {
    return command(
        Usage.of("torque undo", "", "Takes the card's last tick back.", Option.JOB, CARD),
        (bench, call, answer) ->
            said(
                new TorqueBook(bench.job()).takeBack(call.number(CARD.name(), 0, 1, MOST)),
                answer));
  }

  private Command drop() {
    return command(
        Usage.of(
            "torque drop",
            "",
            "Gives a card up, as after the bolts were loosened; it stays in the record.",
            Option.JOB,
            CARD,
            Option.REASON),
        (bench, call, answer) ->
            said(
                new TorqueBook(bench.job())
                    .drop(call.number(CARD.name(), 0, 1, MOST), call.get("--reason")),
                answer));
  }

  private static Status said(TorqueStep step, Answer answer) throws BadInput {
    if (step instanceof TorqueStep.Refused refused) {
      throw new BadInput(refused.sentence());
    }
    if (step instanceof TorqueStep.Questioned questioned) {
      String sentence = questioned.question().sentence();
      answer.only(
          fields(questioned.card()).and("questioned", true).and("sentence", sentence),
          "Out of turn: " + sentence);
      return Status.STOPPED;
    }
    TorqueStep.Done done = (TorqueStep.Done) step;
    answer.only(
        fields(done.card()).and("questioned", false).and("sentence", done.sentence()),
        done.sentence());
    return Status.RIGHT;
  }
}
