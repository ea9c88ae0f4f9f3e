package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import wherefrom.job.FigureParser;
import wherefrom.job.bags.Bag;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BagOutcome;
import wherefrom.job.bags.Bags;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.entry.AtAssembly;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.entry.BoltHole;
import wherefrom.job.tags.CodeLookup;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;

/** Bags of fasteners. */
final class BagCommands {
  private static final String BAG = "CODE";
  private static final Option NOTE =
      Option.maybe("--note", "TEXT", "why; with it, it is done all the same");
  private static final Pattern HOLE =
      Pattern.compile("(\\d{1,3})(?:@(\\d{1,3}):(\\d{1,3}))?(?:=(.+))?");

  private BagCommands() {}

  static List<Command> all() {
    return List.of(
        fill(),
        list(),
        move("used", "Logs that all of a bag is used again.", Whereabouts.FITTED),
        move("wash", "Logs that a bag is off for washing.", Whereabouts.WASHING),
        move("shop", "Logs that a bag is at the machine shop.", Whereabouts.AT_SHOP),
        move("back", "Logs that a bag is back on the bench.", Whereabouts.OUT),
        move("lost", "Logs that a bag cannot be found.", Whereabouts.LOST));
  }

  private static Command fill() {
    return Command.of(
            "bag fill",
            "Says what is in a bag; said again, it mends what was said.",
            Option.needed("--what", "TEXT", "what it holds, such as head bolts, long"),
            Option.needed("--count", "N", "how many pieces"),
            Option.maybe("--for", "WHERE", "a big part's code, or words"),
            Option.maybe("--order", "TEXT", "thread and washer order"),
            Option.maybe("--with", "KEY", "what goes on the threads at assembly"),
            Option.several("--hole", "N@ACROSS:DOWN=LENGTH", "a hole, its place, its bolt"))
        .takes(BAG)
        .noting(
            "A bag's code is on its tag; its number alone serves too. ACROSS and DOWN are percent"
                + " of the drawing. On the threads: "
                + Names.all(List.of(AtAssembly.values()))
                + ".")
        .onJob((bench, call, answer) -> said(fill(bench, call), answer));
  }

  private static BagOutcome fill(OpenedJob bench, Call call) throws BadInput {
    Optional<String> whose = call.find("--for");
    int bigPart = whose.isPresent() ? bigPart(bench, whose.get()).orElse(0) : 0;
    Optional<String> with = call.find("--with");
    return new Bags(bench.job())
        .fill(
            new BagFilled(
                number(bench, one(call)),
                call.get("--what").strip(),
                bigPart,
                bigPart == 0 ? whose.orElse("").strip() : "",
                call.number("--count", 0, 1, Bags.MOST_PIECES),
                holes(bench, call),
                call.text("--order").strip(),
                with.isEmpty()
                    ? AtAssembly.NOT_SAID
                    : Names.find(AtAssembly.class, "thing for threads", with.get())));
  }

  private static List<BoltHole> holes(OpenedJob bench, Call call) throws BadInput {
    List<BoltHole> holes = new ArrayList<>();
    for (String text : call.listed("--hole")) {
      Matcher hole = HOLE.matcher(text);
      if (!hole.matches()) {
        throw call.wrong(
            "--hole: \"" + text + "\" does not name a hole. Give 1=2.5in, or 1@20:50=2.5in.");
      }
      holes.add(hole(bench, call, hole));
    }
    return holes;
  }

  private static BoltHole hole(OpenedJob bench, Call call, Matcher hole) throws BadInput {
    Optional<String> length = Optional.ofNullable(hole.group(4));
    try {
      return new BoltHole(
          Integer.parseInt(hole.group(1)),
          percent(hole.group(2)),
          percent(hole.group(3)),
          length.isEmpty() ? Optional.empty() : Optional.of(length(bench, length.get())));
    } catch (IllegalArgumentException e) {
      throw call.wrong("--hole: " + e.getMessage() + ".");
    }
  }

  private static Optional<Integer> percent(@Nullable String digits) {
    return Optional.ofNullable(digits).map(Integer::parseInt);
  }

  private static Amount length(OpenedJob bench, String text) throws BadInput {
    return TypedAmount.read(text, FigureParser.usual(bench.state().units(), Dimension.LENGTH));
  }

  /** The number of the big part that a code or a number stands for; empty where it is words. */
  private static Optional<Integer> bigPart(OpenedJob bench, String text) throws BadInput {
    return text.matches("[0-9 ]+")
        ? Optional.of(BigPartCommands.number(bench, text))
        : BagBook.of(bench.state()).bigParts().stream()
            .filter(record -> record.words().equals(text.strip()))
            .map(BigPartRecord::number)
            .findFirst();
  }

  private static String one(Call call) throws BadInput {
    if (call.operands().size() != 1) {
      throw call.wrong("Give the code of one bag.");
    }
    return call.operands().get(0);
  }

  private static int number(OpenedJob bench, String code) throws BadInput {
    if (code.matches("[0-9]{1,4}")) {
      return Integer.parseInt(code);
    }
    CodeLookup found = bench.find(code);
    if (found instanceof CodeLookup.ABag bag) {
      return bag.number();
    }
    throw new BadInput(code + " is not a bag of this job: " + Meaning.sentence(found));
  }

  private static Command move(String word, String summary, Whereabouts to) {
    return Command.of(
            "bag " + word,
            summary,
            Option.maybe("--count", "N", "how many pieces were counted"),
            NOTE)
        .takes("CODE…|-")
        .onJob(
            (bench, call, answer) ->
                Codes.each(call, answer, code -> move(bench, call, code.get(0), to, answer)));
  }

  private static Status move(OpenedJob bench, Call call, String code, Whereabouts to, Answer answer)
      throws BadInput {
    int counted = call.number("--count", 0, 1, Bags.MOST_PIECES);
    return said(
        new Bags(bench.job()).move(number(bench, code), to, counted, call.text("--note")), answer);
  }

  private record DoneRow(boolean done, String sentence) implements Row {
    @Override
    public String text() {
      return sentence;
    }
  }

  /** What is asked about stops; with a note it is done all the same. */
  static Status said(BagOutcome came, Answer answer) throws BadInput {
    if (came instanceof BagOutcome.Refused refused) {
      throw new BadInput(refused.sentence());
    }
    boolean done = came instanceof BagOutcome.Logged;
    String next = done ? "" : " Say --note why, to do it all the same.";
    answer.row(new DoneRow(done, came.sentence() + next));
    return Status.stoppedIf(!done);
  }

  private record BagRow(
      int bag,
      String code,
      String what,
      String belongsTo,
      int pieces,
      String where,
      String order,
      String threads,
      List<HoleRow> holes)
      implements Row {
    static BagRow of(OpenedJob bench, BagBook book, Bag bag) {
      BagFilled filled = bag.filled();
      return new BagRow(
          bag.number(),
          bench.book().bag(bag.number()).digits(),
          filled.what(),
          book.belongsTo(bag),
          filled.pieces(),
          bag.where().state(),
          filled.order(),
          filled.with().words(),
          filled.holes().stream().map(HoleRow::of).toList());
    }

    @Override
    public String text() {
      return Answer.cells("bag " + bag, code, what, belongsTo, pieces, where);
    }
  }

  private record HoleRow(
      int hole, Optional<Integer> across, Optional<Integer> down, String length) {
    static HoleRow of(BoltHole hole) {
      return new HoleRow(
          hole.hole(), hole.across(), hole.down(), hole.length().map(Amount::text).orElse(""));
    }
  }

  private static Command list() {
    return Command.of(
            "bag list",
            "Lists the bags: number, code, what, for what, pieces, where.",
            Option.flag("--to-fit", "only those that are not used again yet"))
        .lists(BagCommands::list);
  }

  private static Stream<BagRow> list(OpenedJob bench, Call call) {
    BagBook book = BagBook.of(bench.state());
    boolean toFit = call.find("--to-fit").isPresent();
    return book.bags().stream()
        .filter(bag -> !toFit || bag.where() != Whereabouts.FITTED)
        .map(bag -> BagRow.of(bench, book, bag));
  }
}
