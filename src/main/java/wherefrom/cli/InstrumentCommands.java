package wherefrom.cli;

import java.util.List;
import wherefrom.job.ports.Equipment;
import wherefrom.quantity.Dimension;

/** The person's tools, and the limits and sizes typed for this engine. */
final class InstrumentCommands {
  private static final Option NAME = Option.needed("--name", "NAME", "the tool's name");
  private static final Option PLAN = Option.needed("--plan", "KEY", "which readings");
  private static final Option SOURCE =
      Option.needed("--source", "TEXT", "where it stands: manual and page");

  private final Equipment equipment;

  private InstrumentCommands(Equipment equipment) {
    this.equipment = equipment;
  }

  static List<Command> all(Equipment equipment) {
    InstrumentCommands commands = new InstrumentCommands(equipment);
    return List.of(
        new InstrumentListCommand(equipment, true),
        commands.add(),
        commands.zero(),
        new InstrumentListCommand(equipment, false),
        commands.limit(),
        commands.size());
  }

  private Command command(
      String name, String summary, InstrumentCommand.Deed deed, Option... options) {
    return new InstrumentCommand(Usage.of(name, "", summary, options), deed, equipment);
  }

  private Command add() {
    return command(
        "tool add",
        "Lists a tool that you measure with; its figures decide what a reading can tell.",
        (instruments, call) ->
            instruments.list(
                call.get("--name"),
                call.has(Option.flag("--force", "")) ? Dimension.FORCE : Dimension.LENGTH,
                call.get("--step"),
                call.get("--error"),
                call.get("--repeat")),
        Option.JOB,
        NAME,
        Option.needed("--step", "SIZE", "the smallest step that it shows, such as 0.0001in"),
        Option.needed("--error", "SIZE", "by how much it may be off, either way"),
        Option.needed("--repeat", "SIZE", "by how much its repeats differ, either way"),
        Option.flag("--force", "it is a scale: its figures are forces"));
  }

  private Command zero() {
    return command(
        "tool zero",
        "Keeps what a tool shows at zero.",
        (instruments, call) -> instruments.zero(call.get("--name"), call.get("--shows")),
        Option.JOB,
        NAME,
        Option.needed("--shows", "SIZE", "what it shows; 0 where it is on its mark"));
  }

  private Command limit() {
    return command(
        "limit set",
        "Types a limit of this engine; without lower and upper it is taken away.",
        (instruments, call) ->
            instruments.limit(
                call.get("--plan"),
                call.get("--result"),
                call.find("--lower").orElse(""),
                call.find("--upper").orElse(""),
                call.get("--source")),
        Option.JOB,
        PLAN,
        Option.needed("--result", "KEY", "which result, such as value, taper, clearance"),
        Option.maybe("--lower", "SIZE", "the least allowed"),
        Option.maybe("--upper", "SIZE", "the most allowed"),
        SOURCE);
  }

  private Command size() {
    return command(
        "limit size",
        "Types the size when new of a journal or bore.",
        (instruments, call) ->
            instruments.size(call.get("--plan"), call.get("--size"), call.get("--source")),
        Option.JOB,
        PLAN,
        Option.needed("--size", "SIZE", "as printed in this engine's manual"),
        SOURCE);
  }
}
