package wherefrom.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.inspection.Decision;
import wherefrom.job.bags.AlwaysNew;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BagOutcome;
import wherefrom.job.bags.BigPartOrder;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.bags.BigParts;
import wherefrom.job.tags.CodeLookup;
import wherefrom.parts.Whereabouts;

/** Big parts: heads, covers, pumps, manifolds and whatever else comes off. */
final class BigPartCommands {
  private static final Option NOTE =
      Option.maybe("--note", "TEXT", "why; with it, it is done all the same");

  /** What is done to one big part. */
  private interface Deed {
    BagOutcome of(BigParts parts, int number, Call call) throws BadInput;
  }

  private BigPartCommands() {}

  static List<Command> all() {
    return List.of(
        add(),
        list(),
        deed(
            "off",
            "Takes big parts off; what usually comes off first is asked about.",
            (parts, number, call) -> parts.off(number, call.text("--note")),
            NOTE),
        deed(
            "on",
            "Puts big parts on; what goes in first is asked about.",
            (parts, number, call) -> parts.on(number, call.text("--note")),
            NOTE),
        move("wash", "Logs that big parts are off for washing.", Whereabouts.WASHING),
        move("shop", "Logs that big parts are at the machine shop.", Whereabouts.AT_SHOP),
        move("back", "Logs that big parts are back on the bench.", Whereabouts.OUT),
        move("lost", "Logs that big parts cannot be found.", Whereabouts.LOST),
        deed(
            "mark",
            "Keeps marks and casting numbers as they are found.",
            (parts, number, call) -> parts.mark(number, call.get("--text")),
            Option.needed("--text", "TEXT", "as it stands on the part")),
        deed(
            "decide",
            "Keeps what becomes of big parts.",
            (parts, number, call) ->
                parts.decide(
                    number,
                    Names.find(Decision.class, "decision", call.get("--as")),
                    call.text("--reason")),
            Option.needed("--as", "DECISION", "reuse, machine or replace"),
            Option.maybe("--reason", "TEXT", "why, such as cheap to be sure")),
        gaskets(),
        buy());
  }

  private static Command add() {
    return Command.of(
            "big add",
            "Keeps the usual big parts of this engine, or one more by a word.",
            Option.maybe("--word", "TEXT", "its name, such as dipstick tube"))
        .onJob(
            (bench, call, answer) -> {
              BigParts parts = new BigParts(bench.job());
              Optional<String> word = call.find("--word");
              return BagCommands.said(
                  word.isEmpty() ? parts.nameUsual() : parts.nameOwn(word.get()), answer);
            });
  }

  private static Command move(String word, String summary, Whereabouts to) {
    return deed(word, summary, (parts, number, call) -> parts.move(number, to, ""));
  }

  private static Command deed(String word, String summary, Deed deed, Option... options) {
    return Command.of("big " + word, summary, options)
        .takes("CODE…|-")
        .onJob(
            (bench, call, answer) ->
                Codes.each(
                    call,
                    answer,
                    code -> {
                      int number = number(bench, code.get(0));
                      return BagCommands.said(
                          deed.of(new BigParts(bench.job()), number, call), answer);
                    }));
  }

  /** The number of the big part that a code stands for; the number itself serves too. */
  static int number(OpenedJob bench, String code) throws BadInput {
    if (code.matches("[0-9]{1,4}")) {
      return Integer.parseInt(code);
    }
    CodeLookup found = bench.find(code);
    if (found instanceof CodeLookup.ABigPart bigPart) {
      return bigPart.part().number();
    }
    throw new BadInput(code + " is not a big part of this job: " + Meaning.sentence(found));
  }

  private record BigPartRow(
      int bigPart,
      String code,
      String part,
      String where,
      String marks,
      Optional<String> decision,
      String reason,
      boolean next)
      implements Row {
    static BigPartRow of(OpenedJob bench, BigPartRecord record, boolean next) {
      return new BigPartRow(
          record.number(),
          record.part().code(bench.state().engine()).digits(),
          record.words(),
          record.where().state(),
          record.marks(),
          record.decision().map(Decision::word),
          record.reason(),
          next);
    }

    @Override
    public String text() {
      return Answer.cells(
          bigPart, code, part, where, decision.orElse(""), marks, next ? "next" : "");
    }
  }

  private static Command list() {
    return Command.of(
            "big list",
            "Lists the big parts: number, code, part, where, decision, marks, which is next.",
            Option.flag("--to-fit", "only those that are off"))
        .lists(BigPartCommands::list);
  }

  /** Next is what comes off next; once something is on again, what goes on next. */
  private static Stream<BigPartRow> list(OpenedJob bench, Call call) {
    BagBook book = BagBook.of(bench.state());
    BigPartOrder order = new BigPartOrder(bench.state(), book);
    boolean together =
        book.bigParts().stream().anyMatch(record -> record.where() == Whereabouts.FITTED)
            || !bench.state().fitted().isEmpty();
    Optional<BigPartRecord> next = together ? order.findNextOn() : order.findNextOff();
    boolean toFit = call.find("--to-fit").isPresent();
    return book.bigParts().stream()
        .filter(record -> !toFit || !record.isOn())
        .map(record -> BigPartRow.of(bench, record, next.equals(Optional.of(record))));
  }

  private record GasketRow(String what, int pieces, List<String> because) implements Row {
    @Override
    public String text() {
      return Answer.cells(pieces, what, String.join(", ", because));
    }
  }

  private static Command buy() {
    return Command.of(
            "big buy",
            "Puts the gaskets and seals that are always new on the list to buy.",
            Option.flag("--not", "takes them off the list"))
        .onJob(
            (bench, call, answer) ->
                BagCommands.said(
                    new BigParts(bench.job()).listGaskets(call.find("--not").isEmpty()), answer));
  }

  private static Command gaskets() {
    return Command.of(
            "big gaskets", "Lists the gaskets and seals that are always new: pieces, what, why.")
        .lists(
            (bench, call) ->
                AlwaysNew.of(BagBook.of(bench.state())).stream()
                    .map(line -> new GasketRow(line.what(), line.pieces(), line.because())));
  }
}
