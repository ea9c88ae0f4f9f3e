package wherefrom.cli;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wherefrom.job.entry.RunInEnd;
import wherefrom.job.entry.RunInGauge;
import wherefrom.job.running.RunIn;
import wherefrom.job.running.RunInAlarm;
import wherefrom.job.running.RunInBook;
import wherefrom.job.running.RunInPlan;
import wherefrom.quantity.Amount;

/** The run-in of an engine, by its clock. */
final class RunCommands {
  private static final Option SPEED =
      Option.maybe("--speed", "RPM", "such as 1500-2500, as the cam's sheet says");
  private static final Option MINUTES =
      Option.maybe("--minutes", "N", "how long in all, as the cam's sheet says");
  private static final Option SOURCE =
      Option.maybe("--source", "TEXT", "where speed and minutes come from");
  private static final Option ANYWAY =
      Option.maybe("--anyway", "TEXT", "why it begins although something is open");
  private static final Option OIL = Option.maybe("--oil", "SIZE", "oil pressure, such as 45psi");
  private static final Option COOLANT =
      Option.maybe("--coolant", "SIZE", "coolant temperature, such as 185F or 85C");
  private static final Option WHY = Option.needed("--why", "KEY", "one of: " + whys());
  private static final Option WORDS = Option.maybe("--words", "TEXT", "what was seen or heard");
  private static final Option RAN =
      Option.maybe(
          "--minutes", "N", "how long it ran since, where the clock was left on or set back");
  private static final Option RIGHT =
      Option.maybe("--words", "TEXT", "what was put right; needed after a fault");

  private RunCommands() {}

  static List<Command> all() {
    return List.of(
        Command.of("run show", "Tells how the run-in stands, and what it was stopped for.")
            .lists((bench, call) -> rows(bench, now(call))),
        Command.of(
                "run begin",
                "Keeps that the engine runs in; without figures the usual ones count.",
                SPEED,
                MINUTES,
                SOURCE,
                ANYWAY)
            .onJob(RunCommands::begin),
        Command.of("run note", "Keeps what the gauges show while it runs in.", OIL, COOLANT)
            .onJob(RunCommands::note),
        Command.of("run stop", "Keeps that the engine was stopped, and why.", WHY, WORDS, RAN)
            .tells(RunCommands::stop),
        Command.of("run on", "Keeps that a stopped run-in goes on; the minutes add up.", RIGHT)
            .tells(RunCommands::takeUp));
  }

  private static String whys() {
    return Arrays.stream(RunInEnd.values()).map(RunInEnd::key).collect(Collectors.joining(", "));
  }

  private static Instant now(Call call) {
    return call.services().clock().instant();
  }

  private static Stream<Row> rows(OpenedJob bench, Instant now) {
    Optional<RunIn> run = new RunInBook(bench.job()).find();
    return run.stream()
        .flatMap(
            one ->
                Stream.concat(
                    Stream.of(new RunRow(one, now)), one.notes().stream().map(NoteRow::new)));
  }

  /** A run-in as it stands. */
  private record RunRow(RunIn run, Instant now) implements Row {
    private String stopped() {
      return run.findStop().map(stop -> stop.why().key()).orElse("");
    }

    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "state", run.state().name().toLowerCase(Locale.ROOT),
          "plan", run.plan().words(),
          "source", run.plan().source(),
          "secondsRan", run.ran(now).toSeconds(),
          "secondsLeft", run.left(now).toSeconds(),
          "stopped", stopped());
    }

    @Override
    public String text() {
      String state = run.state().name().toLowerCase(Locale.ROOT);
      String left = RunIn.clock(run.left(now)) + " left of " + run.plan().words();
      return Answer.cells(state, left, run.plan().source(), stopped());
    }
  }

  private record NoteRow(RunIn.Note note) implements Row {
    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "secondsRan", note.at().toSeconds(),
          "gauge", note.noted().gauge().key(),
          "reading", note.noted().reading().text());
    }

    @Override
    public String text() {
      String at = RunIn.clock(note.at());
      return Answer.cells(at, note.noted().gauge().words(), note.noted().reading().text());
    }
  }

  /** What stops it. */
  private record OpenRow(String open) implements Row {
    @Override
    public Map<String, Object> fields() {
      return Json.object("open", open);
    }

    @Override
    public String text() {
      return open;
    }
  }

  private static Status begin(OpenedJob bench, Call call, Answer answer) throws BadInput {
    RunInBook book = new RunInBook(bench.job());
    RunInPlan plan = plan(book, call);
    List<String> open = Refusals.get(() -> book.begin(plan, call.text("--anyway")));
    if (!open.isEmpty()) {
      open.forEach(one -> answer.row(new OpenRow(one)));
      return Status.STOPPED;
    }
    answer.row(new RunRow(book.find().orElseThrow(), now(call)));
    return Status.RIGHT;
  }

  /** The figures of the call, all three, or the usual ones. */
  private static RunInPlan plan(RunInBook book, Call call) throws BadInput {
    long given = Stream.of(SPEED, MINUTES, SOURCE).filter(call::has).count();
    if (given == 0) {
      return RunInPlan.usual(book.lifters());
    }
    if (given < 3) {
      throw new BadInput("Give --speed, --minutes and --source together.");
    }
    int minutes = call.number("--minutes", 0, 1, RunInPlan.MOST_MINUTES);
    return Refusals.get(() -> RunInPlan.read(call.text("--speed"), minutes, call.text("--source")));
  }

  /** Stopped is who has to switch off at once. */
  private static Status note(OpenedJob bench, Call call, Answer answer) throws BadInput {
    RunInBook book = new RunInBook(bench.job());
    Optional<Amount> oil = amount(bench, call, OIL, RunInGauge.OIL_PRESSURE);
    Optional<Amount> coolant = amount(bench, call, COOLANT, RunInGauge.COOLANT);
    if (oil.isEmpty() && coolant.isEmpty()) {
      throw new BadInput("Give --oil, --coolant or both.");
    }
    bench.asOne(
        () -> {
          Refusals.heed(() -> oil.ifPresent(read -> book.note(RunInGauge.OIL_PRESSURE, read)));
          Refusals.heed(() -> coolant.ifPresent(read -> book.note(RunInGauge.COOLANT, read)));
        });
    RunIn run = book.find().orElseThrow();
    answer.only(new RunRow(run, now(call)));
    List<RunInAlarm> alarms =
        Stream.of(
                oil.flatMap(read -> RunInAlarm.find(RunInGauge.OIL_PRESSURE, read, run.plan())),
                coolant.flatMap(read -> RunInAlarm.find(RunInGauge.COOLANT, read, run.plan())))
            .flatMap(Optional::stream)
            .toList();
    alarms.forEach(alarm -> answer.say(alarm.sentence()));
    return alarms.isEmpty() ? Status.RIGHT : Status.STOPPED;
  }

  private static Optional<Amount> amount(
      OpenedJob bench, Call call, Option option, RunInGauge gauge) throws BadInput {
    Optional<String> text = call.find(option);
    return text.isEmpty()
        ? Optional.empty()
        : Optional.of(TypedAmount.read(bench, text.get(), gauge.dimension()));
  }

  private static Row stop(OpenedJob bench, Call call) throws BadInput {
    RunInEnd why =
        RunInEnd.find(call.get(WHY))
            .orElseThrow(() -> new BadInput("--why is one of: " + whys() + "."));
    OptionalInt minutes =
        call.has(RAN)
            ? OptionalInt.of(call.number("--minutes", 0, 0, RunInPlan.MOST_MINUTES))
            : OptionalInt.empty();
    RunInBook book = new RunInBook(bench.job());
    Refusals.heed(() -> book.stop(why, call.text("--words"), now(call), minutes));
    return new RunRow(book.find().orElseThrow(), now(call));
  }

  private static Row takeUp(OpenedJob bench, Call call) throws BadInput {
    RunInBook book = new RunInBook(bench.job());
    Refusals.heed(() -> book.takeUp(call.text("--words")));
    return new RunRow(book.find().orElseThrow(), now(call));
  }
}
