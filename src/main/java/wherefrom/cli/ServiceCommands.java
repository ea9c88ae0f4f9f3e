package wherefrom.cli;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import wherefrom.job.running.ServiceBook;
import wherefrom.job.running.Serving;
import wherefrom.quantity.Amount;

/** What is seen to after the run-in, what the engine has run, and service. */
final class ServiceCommands {
  private static final Option POINT =
      Option.needed("--point", "KEY", "which point, such as oil or lash-again");
  private static final Option WORDS = Option.maybe("--words", "TEXT", "what was done or seen");
  private static final Option OPEN = Option.flag("--open", "it is to be done again");
  private static final Option AFTER =
      Option.needed("--after", "SIZE", "since the first start, such as 20h or 500mi");
  private static final Option SOURCE = Option.needed("--source", "TEXT", "where it comes from");
  private static final Option RUN =
      Option.needed("--run", "SIZE", "in all since the first start, such as 35mi or 2.5h");

  private ServiceCommands() {}

  static List<Command> all() {
    return List.of(
        Command.of("service list", "Lists what is due after the first start.")
            .lists((bench, call) -> rows(bench)),
        Command.of("service tick", "Keeps that a point was seen to.", POINT, WORDS, OPEN)
            .tells(ServiceCommands::tick),
        Command.of("service due", "Sets when a point is due in this engine.", POINT, AFTER, SOURCE)
            .tells(ServiceCommands::due),
        Command.of("service run", "Keeps what the engine has run in all.", RUN, WORDS)
            .lists(ServiceCommands::run),
        Command.of("service begin", "Puts the engine in service and closes its record.", WORDS)
            .noting("Then only \"service\" commands and photographs change the job.")
            .tells(ServiceCommands::begin),
        Command.of("service end", "Opens the record again.", Option.REASON)
            .tells(ServiceCommands::end),
        Command.of(
                "service apart",
                "Begins the engine's next life: it comes apart again.",
                Option.REASON)
            .noting(
                "Every part is in where it sat, under its number; what was found and decided is past.")
            .tells(ServiceCommands::apart));
  }

  private static Stream<Row> rows(OpenedJob bench) {
    ServiceBook book = ServiceBook.of(bench.state());
    Stream<Row> state = bench.state().service().since().stream().map(at -> new StateRow(true));
    Stream<Row> uses = book.uses().stream().map(UseRow::new);
    return Stream.of(state, uses, book.lines().stream().<Row>map(LineRow::new))
        .flatMap(each -> each);
  }

  /** Whether the record is closed. */
  private record StateRow(boolean inService) implements Row {
    @Override
    public Map<String, Object> fields() {
      return Json.object("inService", inService);
    }

    @Override
    public String text() {
      return inService ? "In service: the record is closed." : "The record is open.";
    }
  }

  private record UseRow(ServiceBook.Use use) implements Row {
    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "time", use.at().toString(), "run", use.run().text(), "words", use.words());
    }

    @Override
    public String text() {
      return Answer.cells("run in all", use.run().text(), use.words());
    }
  }

  private record LineRow(ServiceBook.Line line) implements Row {
    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "point", line.point().key(),
          "title", line.point().title(),
          "state", line.state().word(),
          "due", line.dueWords(),
          "source", line.source(),
          "words", line.words());
    }

    @Override
    public String text() {
      return Answer.cells(
          line.point().key(),
          line.state().word(),
          line.point().title(),
          line.dueWords(),
          line.words());
    }
  }

  private static Row tick(OpenedJob bench, Call call) throws BadInput {
    Serving serving = new Serving(bench.job());
    String point = call.get(POINT);
    return new LineRow(
        Refusals.get(
            () -> serving.tick(point, call.text("--words"), !call.has(OPEN)),
            "\"service list\" names them."));
  }

  private static Row due(OpenedJob bench, Call call) throws BadInput {
    Amount after = TypedAmount.read(call.get(AFTER));
    String point = call.get(POINT);
    String source = call.get(SOURCE);
    Serving serving = new Serving(bench.job());
    return new LineRow(Refusals.get(() -> serving.typeDue(point, after, source)));
  }

  private static Stream<Row> run(OpenedJob bench, Call call) throws BadInput {
    Amount run = TypedAmount.read(call.get(RUN));
    Refusals.heed(() -> new Serving(bench.job()).note(run, call.text("--words")));
    return rows(bench);
  }

  private static Row begin(OpenedJob bench, Call call) throws BadInput {
    Refusals.heed(() -> new Serving(bench.job()).putInService(call.text("--words")));
    return new StateRow(true);
  }

  private static Row apart(OpenedJob bench, Call call) throws BadInput {
    String why = call.get(Option.REASON);
    Refusals.heed(() -> new Serving(bench.job()).comesApartAgain(why));
    return new StateRow(false);
  }

  private static Row end(OpenedJob bench, Call call) throws BadInput {
    String why = call.get(Option.REASON);
    Refusals.heed(() -> new Serving(bench.job()).reopen(why));
    return new StateRow(false);
  }
}
