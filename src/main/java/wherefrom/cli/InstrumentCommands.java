package wherefrom.cli;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import wherefrom.inspection.measure.Limit;
import wherefrom.inspection.measure.Tool;
import wherefrom.job.measure.Instruments;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.UnitChoice;

/** The person's tools, and the limits and sizes typed for this engine. */
final class InstrumentCommands {
  private static final Option NAME = Option.needed("--name", "NAME", "the tool's name");
  private static final Option PLAN = Option.needed("--plan", "KEY", "which readings");
  private static final Option FORCE =
      Option.flag("--force", "it is a scale: its figures are forces");
  private static final Option WEIGHT =
      Option.flag("--weight", "it is a scale for parts: its figures are weights");
  private static final Option PRESSURE =
      Option.flag("--pressure", "it is a pressure or vacuum gauge");
  private static final Option PERCENT =
      Option.flag("--percent", "it is a leak tester: its figures are percent");
  private static final Option SOURCE =
      Option.needed("--source", "TEXT", "where it is printed: manual and page");

  /** What is done to the list of tools or limits. */
  private interface Deed {
    Instruments.Answer of(Instruments instruments, Call call) throws BadInput;
  }

  private InstrumentCommands() {}

  static List<Command> all() {
    return List.of(tools(), add(), zero(), limits(), limit(), size());
  }

  private record ToolRow(Tool tool, String zero) implements Row {
    static ToolRow of(OpenedJob bench, Tool tool) {
      String zero = bench.state().measures().findZero(tool.name()).orElse("not checked");
      return new ToolRow(tool, zero);
    }

    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "name", tool.name(),
          "step", tool.resolution().text(),
          "error", tool.error().text(),
          "repeat", tool.repeat().text(),
          "zero", zero);
    }

    @Override
    public String text() {
      String repeat = tool.repeat().text();
      return Answer.cells(
          tool.name(), tool.resolution().text(), tool.error().text(), repeat, "zero: " + zero);
    }
  }

  private static Command tools() {
    return Command.of("tool list", "Lists the tools that you measure with.")
        .lists(
            (bench, call) ->
                bench.state().measures().tools().stream().map(tool -> ToolRow.of(bench, tool)));
  }

  private record LimitRow(Limit limit) implements Row {
    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "plan", limit.plan(),
          "result", limit.result(),
          "lower", limit.lower().map(Amount::text).orElse(""),
          "upper", limit.upper().map(Amount::text).orElse(""),
          "source", limit.source());
    }

    @Override
    public String text() {
      return Answer.cells(limit.plan(), limit.result(), limit.words(), limit.source());
    }
  }

  private static Command limits() {
    return Command.of("limit list", "Lists the limits typed for this engine.")
        .lists((bench, call) -> bench.state().measures().limits().stream().map(LimitRow::new));
  }

  private static Command keeping(Command command, Deed deed) {
    return command.tells(
        (bench, call) -> {
          Instruments.Answer came = deed.of(new Instruments(bench.job()), call);
          if (came instanceof Instruments.Answer.Refused refused) {
            throw new BadInput(refused.sentence());
          }
          return new Row.Said(((Instruments.Answer.Kept) came).sentence());
        });
  }

  private static Command add() {
    return keeping(
        Command.of(
            "tool add",
            "Lists a tool that you measure with. Its figures decide what a reading can tell.",
            NAME,
            Option.needed("--step", "SIZE", "the smallest step that it shows, such as 0.0001in"),
            Option.needed("--error", "SIZE", "how far it may be off, either way"),
            Option.needed("--repeat", "SIZE", "how far its repeats differ, either way"),
            FORCE,
            WEIGHT,
            PRESSURE,
            PERCENT),
        (instruments, call) ->
            instruments.list(
                call.get(NAME),
                units(call),
                call.get("--step"),
                call.get("--error"),
                call.get("--repeat")));
  }

  private static UnitChoice units(Call call) throws BadInput {
    List<Option> given = Stream.of(FORCE, WEIGHT, PRESSURE, PERCENT).filter(call::has).toList();
    if (given.size() > 1) {
      throw call.wrong(
          "Give " + given.get(0).name() + " or " + given.get(1).name() + ", one of both.");
    }
    if (call.has(PERCENT)) {
      return UnitChoice.PERCENT;
    }
    return UnitChoice.of(
        call.has(FORCE)
            ? Dimension.FORCE
            : call.has(WEIGHT)
                ? Dimension.MASS
                : call.has(PRESSURE) ? Dimension.STRESS : Dimension.LENGTH);
  }

  private static Command zero() {
    return keeping(
        Command.of(
            "tool zero",
            "Keeps what a tool shows at zero.",
            NAME,
            Option.needed("--shows", "SIZE", "what it shows; 0 where it is right")),
        (instruments, call) -> instruments.zero(call.get(NAME), call.get("--shows")));
  }

  private static Command limit() {
    return keeping(
        Command.of(
            "limit set",
            "Sets a limit; without lower and upper it is removed.",
            PLAN,
            Option.needed("--result", "KEY", "which result, such as value, taper, clearance"),
            Option.maybe("--lower", "SIZE", "the lower limit"),
            Option.maybe("--upper", "SIZE", "the upper limit"),
            SOURCE),
        (instruments, call) ->
            instruments.limit(
                call.get(PLAN),
                call.get("--result"),
                call.text("--lower"),
                call.text("--upper"),
                call.get(SOURCE)));
  }

  private static Command size() {
    return keeping(
        Command.of(
            "limit size",
            "Sets the size when new of a journal or bore.",
            PLAN,
            Option.needed("--size", "SIZE", "as printed in this engine's manual"),
            SOURCE),
        (instruments, call) ->
            instruments.size(call.get(PLAN), call.get("--size"), call.get(SOURCE)));
  }
}
