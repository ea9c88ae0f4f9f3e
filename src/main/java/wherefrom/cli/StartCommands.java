package wherefrom.cli;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import wherefrom.job.puttogether.FirstStart;
import wherefrom.job.puttogether.StartList;

/** What is seen to before the engine is started for the first time. */
final class StartCommands {
  private static final Option POINT =
      Option.needed("--point", "KEY", "which line, such as oil or rocker-3EX");
  private static final Option WORDS =
      Option.maybe("--words", "TEXT", "what was used or seen, such as the oil and its additive");
  private static final Option OPEN = Option.flag("--open", "it is to be done again");

  private StartCommands() {}

  static List<Command> all() {
    return List.of(
        Command.of("start list", "Lists what is seen to before the first start.")
            .lists((bench, call) -> rows(bench)),
        Command.of("start tick", "Keeps that a line of that list was seen to.", POINT, WORDS, OPEN)
            .tells(StartCommands::tick));
  }

  /** What the job shows as open, then the lines that are ticked. */
  private static Stream<Row> rows(OpenedJob bench) {
    Stream<Row> open =
        new FirstStart(bench.job())
            .points().stream().filter(FirstStart.Point::open).map(OpenRow::new);
    Stream<Row> lines = new StartList(bench.job()).lines().stream().map(LineRow::new);
    return Stream.concat(open, lines);
  }

  private record OpenRow(FirstStart.Point point) implements Row {
    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "point",
          "",
          "title",
          point.heading(),
          "state",
          "open in the job",
          "words",
          point.words());
    }

    @Override
    public String text() {
      return Answer.cells("open in the job", point.heading(), point.words());
    }
  }

  private record LineRow(StartList.Line line) implements Row {
    private String state() {
      return line.ticked() ? "done" : "to do";
    }

    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "point", line.key(), "title", line.title(), "state", state(), "words", line.words());
    }

    @Override
    public String text() {
      return Answer.cells(line.key(), state(), line.title(), line.words());
    }
  }

  private static Row tick(OpenedJob bench, Call call) throws BadInput {
    StartList list = new StartList(bench.job());
    String point = call.get(POINT);
    return new LineRow(
        Refusals.get(
            () -> list.tick(point, call.text("--words"), !call.has(OPEN)),
            "\"start list\" names them."));
  }
}
