package wherefrom.cli;

import java.util.List;
import java.util.Optional;
import wherefrom.job.FittingSize;
import wherefrom.job.PartRecord;
import wherefrom.job.SurfaceSizes;
import wherefrom.job.handling.Handling;
import wherefrom.job.handling.HandlingOutcome;
import wherefrom.job.handling.NewPart;
import wherefrom.job.puttogether.WhereTo;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.takeapart.TakeApart;
import wherefrom.parts.Part;
import wherefrom.parts.TagCode;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.Verdict;

/** Parts that come out, are asked about, mislaid, found, noted, replaced, tagged anew. */
final class PartCommands {
  private static final String CODES = "CODE…|-";

  /** What is done to one part. */
  interface Deed {
    HandlingOutcome of(Handling handling, int item, Call call) throws BadInput;
  }

  private PartCommands() {}

  static List<Command> all() {
    return List.of(
        out(), where(), back(), lost(), found(), note(), replace(), reprint(), tookOut());
  }

  private static Command out() {
    return Command.of("out", "Logs parts that came out of the engine.")
        .takes(CODES)
        .noting("One line per part: digits, what was done, the part.")
        .onJob(
            (bench, call, answer) ->
                Codes.each(call, answer, code -> out(bench, code.get(0), answer)));
  }

  private record OutRow(String code, String done, String part) implements Row {}

  /** A code that stopped. */
  private record StoppedRow(Meaning.Judged judged, String code) implements Row {
    @Override
    public String text() {
      return Answer.cells(code, judged.verdict().word(), judged.told());
    }
  }

  private static Status out(OpenedJob bench, String code, Answer answer) throws BadInput {
    TakeApart.Answer out = new TakeApart(bench.job()).out(bench.book().find(code));
    return out.<Ending>match(
            came -> () -> out(bench, "out", came.part().part(), answer),
            had -> () -> out(bench, "already out", had.part().part(), answer),
            other -> () -> fittedOrLost(bench, other.part(), answer),
            refused -> () -> stopped(bench, code, refused.verdict(), answer),
            other ->
                Ending.bad(
                    code
                        + " is not a part's tag: "
                        + Meaning.of(other.found())
                        + ". Give the part's code."))
        .end();
  }

  private static Status fittedOrLost(OpenedJob bench, PartRecord part, Answer answer) {
    out(bench, part.where().state(), part.part(), answer);
    answer.fault(
        "It did not come out now: it is "
            + part.where().words()
            + ". See "
            + (part.where() == Whereabouts.LOST ? "found." : "took-out."));
    return Status.STOPPED;
  }

  private static Status out(OpenedJob bench, String done, Part part, Answer answer) {
    answer.row(new OutRow(bench.digits(part), done, part.words()));
    return Status.RIGHT;
  }

  private static Status stopped(OpenedJob bench, String code, Verdict verdict, Answer answer) {
    answer.row(new StoppedRow(Meaning.Judged.of(bench, verdict), code));
    return Status.STOPPED;
  }

  private static Command where() {
    return Command.of("where", "Says where a part goes, or what belongs at a place; logs nothing.")
        .takes(CODES)
        .onJob(
            (bench, call, answer) ->
                Codes.each(call, answer, code -> where(bench, code.get(0), answer)));
  }

  private record WhereRow(String code, String meaning, String sentence, Row.Beside verdict)
      implements Row {
    @Override
    public String text() {
      return Row.lines(verdict.text(), sentence);
    }
  }

  private static Status where(OpenedJob bench, String code, Answer answer) {
    CodeLookup found = bench.book().find(code);
    String meaning = Meaning.of(found);
    if (found instanceof CodeLookup.Refused refused) {
      Verdict verdict = refused.verdict();
      Row.Beside word = new Row.Beside(verdict.word());
      String told = Meaning.told(verdict, Meaning.words(bench, verdict));
      answer.row(new WhereRow(code, meaning, told, word));
      return Status.STOPPED;
    }
    answer.row(new WhereRow(code, meaning, where(bench, found), new Row.Beside("")));
    return Status.RIGHT;
  }

  private static String where(OpenedJob bench, CodeLookup found) {
    return found.match(
        part -> WhereTo.words(bench.state(), part.part().part()),
        spot -> WhereTo.words(bench.state(), spot.spot()),
        Meaning::sentence,
        Meaning::sentence,
        Meaning::sentence,
        Meaning::sentence,
        Meaning::sentence);
  }

  /** Logs parts as off for washing; told with the other washing. */
  static Command wash() {
    return handling(
        "wash",
        "Logs parts as off for washing, in a numbered basket.",
        (handling, item, call) ->
            handling.offForWashing(item, call.number("--basket", 0, 1, TagCode.MOST_ITEM)),
        Option.needed("--basket", "N", "the basket's number"));
  }

  private static Command back() {
    return handling(
        "back",
        "Logs parts as back from washing.",
        (handling, item, call) -> handling.backFromWashing(item));
  }

  private static Command lost() {
    return handling(
        "lost",
        "Logs parts that cannot be found.",
        (handling, item, call) -> handling.lost(item, call.text("--note")),
        Option.maybe("--note", "TEXT", "what is known of it"));
  }

  private static Command found() {
    return handling(
        "found",
        "Logs lost parts that have turned up.",
        (handling, item, call) -> handling.found(item));
  }

  private static Command note() {
    return handling(
        "note",
        "Keeps a note on parts.",
        (handling, item, call) -> handling.note(item, call.get("--text")),
        Option.needed("--text", "TEXT", "the note"));
  }

  private static Command replace() {
    return handling(
        "replace",
        "Retires parts and takes on new ones for their places; gives the new tags' digits.",
        (handling, item, call) ->
            handling.replace(
                item, call.get("--reason"), new NewPart(call.text("--size"), call.text("--sort"))),
        Option.REASON,
        Option.maybe(
            "--size",
            "SIZE",
            "of shells and pistons: 0.010 in, standard, or listed, as decide buy says"),
        Option.maybe("--sort", "SORT", "where it is of another sort, such as roller"));
  }

  private static Command reprint() {
    return handling(
        "reprint",
        "Gives parts a new issue of their tag; older ones are retired. Then: tags --only.",
        (handling, item, call) -> handling.reissue(item, call.get("--reason")),
        Option.REASON);
  }

  private static Command tookOut() {
    return handling(
        "took-out",
        "Logs fitted parts that were taken out again.",
        (handling, item, call) -> handling.tookOut(item, call.text("--reason")),
        Option.maybe("--reason", "TEXT", "why"));
  }

  private static Command handling(String name, String summary, Deed deed, Option... options) {
    return Command.of(name, summary, options)
        .takes(CODES)
        .onJob(
            (bench, call, answer) ->
                Codes.each(call, answer, code -> handle(bench, deed, code.get(0), call, answer)));
  }

  private record HandledRow(String code, int item, String part, String where) implements Row {
    static HandledRow of(OpenedJob bench, PartRecord now) {
      String where = now.where().words() + now.awayTo().map(to -> ", " + to).orElse("");
      Part part = now.part();
      return new HandledRow(bench.digits(part), part.item(), part.words(), where);
    }

    @Override
    public String text() {
      return Answer.cells(code, part, where);
    }
  }

  private static Status handle(OpenedJob bench, Deed deed, String code, Call call, Answer answer)
      throws BadInput {
    Part part = bench.part(code);
    HandlingOutcome handled = deed.of(new Handling(bench.job()), part.item(), call);
    if (handled instanceof HandlingOutcome.Refused refused) {
      throw new BadInput(refused.sentence());
    }
    PartRecord now = ((HandlingOutcome.Logged) handled).part();
    answer.row(HandledRow.of(bench, now));
    if (now.part().item() != part.item()) {
      sizeUnsaid(bench, now.part()).ifPresent(answer::say);
    }
    return Status.RIGHT;
  }

  /** What to do where a new part was taken on of which the list knows the size and nobody said. */
  private static Optional<String> sizeUnsaid(OpenedJob bench, Part taken) {
    SurfaceSizes sizes = new SurfaceSizes(bench.state());
    return sizes.findSizeOf(taken.item()).isPresent()
        ? Optional.empty()
        : sizes
            .findToBuy(taken.home())
            .filter(FittingSize::isKnown)
            .map(
                size ->
                    "Nobody said its size. The list says "
                        + size.words()
                        + ": undo it, and replace it with --size listed.");
  }
}
