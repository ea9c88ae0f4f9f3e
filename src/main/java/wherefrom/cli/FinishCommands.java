package wherefrom.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wherefrom.engine.Spot;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryWords;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.Undone;
import wherefrom.job.puttogether.ToFit;
import wherefrom.job.tags.CodeLookup;
import wherefrom.parts.Place;
import wherefrom.rules.Cycle;

/** Steps undone, what is still to fit or in the wrong place, sections finished. */
final class FinishCommands {
  private static final Option BEFORE =
      Option.flag("--before", "undo the step before one that cannot be undone");

  private FinishCommands() {}

  static List<Command> all() {
    return List.of(undo(), swaps(), toFit(), leaveEmpty(), finish());
  }

  private static Command undo() {
    return Command.of(
            "undo", "Undoes the last step, a standing stop first; nothing is erased.", BEFORE)
        .noting("What is printed cannot be undone: it says so, with status 1.")
        .onJob(FinishCommands::undo);
  }

  private record UndoneRow(String undone, long sequence) implements Row {
    @Override
    public String text() {
      return "Undone: " + undone + ".";
    }
  }

  private static Status undo(OpenedJob bench, Call call, Answer answer) throws BadInput {
    OpenJob job = bench.job();
    EngineJob before = job.state();
    Optional<LoggedEntry> stop = job.stops().takeBack();
    if (stop.isPresent()) {
      String words = EntryWords.of(before, stop.get().entry());
      return answer.only(new UndoneRow(words, stop.get().sequence()));
    }
    Undone undone = call.has(BEFORE) ? job.undoBefore() : job.undo();
    return undone
        .<Ending>match(
            back -> () -> answer.only(new UndoneRow(back.words(), back.step().sequence())),
            kept -> () -> kept(kept, answer),
            nothing -> Ending.bad(nothing.sentence()))
        .end();
  }

  private static Status kept(Undone.Kept kept, Answer answer) {
    answer.only(
        new Row.Told(
            kept.why() + " With --before it undoes the step before: " + kept.before() + ".",
            Json.object("undone", "", "sentence", kept.why(), "before", kept.before())));
    return Status.STOPPED;
  }

  private record SwapRow(boolean closed, List<Integer> parts, String words) implements Row {
    static SwapRow of(Cycle cycle) {
      List<Integer> items = cycle.moves().stream().map(move -> move.part().item()).toList();
      return new SwapRow(cycle.closed(), items, cycle.words());
    }

    @Override
    public String text() {
      return words;
    }
  }

  private static Command swaps() {
    return Command.of("swaps", "Says the shortest way out where parts are swapped.")
        .onJob(
            (bench, call, answer) -> {
              List<Cycle> cycles = Cycle.of(bench.state().fitted());
              cycles.stream().map(SwapRow::of).forEach(answer::row);
              if (cycles.isEmpty()) {
                answer.say("Every fitted part sits in its own place.");
              }
              return Status.RIGHT;
            });
  }

  private static Command toFit() {
    return Command.of("to-fit", "Lists what is still to fit.")
        .noting(
            "One line per place, in the order of putting together: the place, its state,"
                + " the tag's digits.",
            "Then one line per part that is in its place although something speaks"
                + " against it, with the reason.",
            "Last line: how many are to fit, and how many are in, but.")
        .tells((bench, call) -> ToFitRow.of(bench));
  }

  private record LeftRow(String place, String reason, Row.Beside how) implements Row {
    @Override
    public String text() {
      return how.text() + place + ": " + Answer.cell(reason) + ".";
    }
  }

  private static Command leaveEmpty() {
    return Command.of(
            "leave-empty",
            "Leaves the home of a part, or the place at a place card, empty or as it is, for a"
                + " reason.",
            Option.JOB,
            Option.REASON,
            Option.maybe("--kind", "KIND", "whose place at the card, where several are tracked"))
        .takes("CODE…|-")
        .does(
            (call, answer) -> {
              if (call.get(Option.REASON).isBlank()) {
                throw call.wrong("Say why the place stays as it is.");
              }
              try (OpenedJob bench = OpenedJob.open(call, answer)) {
                return Codes.each(call, answer, code -> leave(bench, code.get(0), call, answer));
              }
            });
  }

  private static Status leave(OpenedJob bench, String code, Call call, Answer answer)
      throws BadInput {
    Place place = place(bench, code, call.find("--kind"));
    String reason = call.get(Option.REASON);
    boolean empty = bench.state().findSeated(place).isEmpty();
    if (!empty && bench.state().listAgainst(place).isEmpty()) {
      throw new BadInput(
          "A part sits at "
              + place.words()
              + " and nothing speaks against it: no reason is needed.");
    }
    new ToFit(bench.job()).leave(place, reason);
    Row.Beside how = new Row.Beside(empty ? "Left empty: " : "Left as it is: ");
    answer.row(new LeftRow(place.words(), reason.strip(), how));
    return Status.RIGHT;
  }

  private static Place place(OpenedJob bench, String code, Optional<String> kind) throws BadInput {
    CodeLookup found = bench.find(code);
    if (found instanceof CodeLookup.APart part) {
      return part.part().part().home();
    }
    if (found instanceof CodeLookup.ASpot spot) {
      return place(bench, spot.spot(), kind);
    }
    throw new BadInput(code + " does not name a place of this job: " + Meaning.sentence(found));
  }

  private static Place place(OpenedJob bench, Spot spot, Optional<String> kind) throws BadInput {
    List<Place> all =
        bench.state().places().stream().filter(place -> place.spot().equals(spot)).toList();
    List<Place> there =
        all.stream()
            .filter(place -> kind.isEmpty() || place.kind().key().equals(kind.get()))
            .toList();
    if (there.size() == 1) {
      return there.get(0);
    }
    String kinds = all.stream().map(place -> place.kind().key()).collect(Collectors.joining(", "));
    throw new BadInput("Say with --kind which place at " + spot.words() + ": " + kinds + ".");
  }

  private static Command finish() {
    return Command.of(
            "finish",
            "Finishes a section once each of its places is filled or left empty for a reason.",
            Option.JOB)
        .takes("SECTION")
        .noting(
            "Sections: valvetrain, or valvetrain-left and valvetrain-right; rods, mains, cam.",
            "With the last one finished: cautions and open points before the first start.")
        .does(
            (call, answer) -> {
              String key = call.operand("Give one section.");
              try (OpenedJob bench = OpenedJob.open(call, answer)) {
                FinishRow row = FinishRow.finish(bench, key);
                answer.only(row);
                return Status.stoppedIf(!row.finished());
              }
            });
  }
}
