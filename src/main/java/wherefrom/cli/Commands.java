package wherefrom.cli;

import java.io.BufferedReader;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wherefrom.job.ports.Equipment;

/** Every command; those that are not asked for are not made. */
record Commands(Equipment equipment, BufferedReader in) {
  /** What a call can begin with, in the order of the job. */
  static final List<String> FIRST_WORDS =
      List.of(
          "layouts", "stocks", "job", "demo", "resume", "places", "tags", "read", "out", "tray",
          "where", "wash", "back", "lost", "found", "note", "replace", "reprint", "took-out",
          "shop", "retag", "money", "record", "inspect", "photo", "measure", "tool", "limit",
          "compare", "clearance", "sizes", "plan", "debris", "decide", "fit", "take-back",
          "cycles", "missing", "excuse", "close", "torque", "timing", "check", "backup", "export",
          "import", "workings", "report", "completion", "man");

  List<Command> all() {
    return FIRST_WORDS.stream().flatMap(word -> family(word).stream()).toList();
  }

  /** The command whose whole name a call begins with; of two the longer. */
  Optional<Command> find(List<String> words) {
    return family(words.get(0)).stream()
        .filter(command -> startsWith(words, List.of(command.name().split(" "))))
        .max(Comparator.comparingInt(command -> command.name().length()));
  }

  private static boolean startsWith(List<String> words, List<String> name) {
    return words.size() >= name.size() && words.subList(0, name.size()).equals(name);
  }

  /** The commands whose names begin with a word. */
  List<Command> family(String first) {
    return switch (first) {
      case "layouts", "stocks" -> one(first, LayoutCommands.all(equipment));
      case "job", "demo", "resume", "places" -> one(first, JobCommands.all(equipment));
      case "tags" -> List.of(TagsCommand.of(equipment));
      case "read" -> List.of(ReadCommand.of(equipment));
      case "tray" -> TrayCommands.all(equipment);
      case "out", "where", "back", "lost", "found", "note", "replace", "reprint", "took-out" ->
          one(first, PartCommands.all(equipment, in));
      case "wash" -> WashCommands.all(equipment, in);
      case "shop" -> ShopCommands.all(equipment, in);
      case "retag" -> RetagCommands.all(equipment);
      case "money" -> MoneyCommands.all(equipment);
      case "record", "photo" -> one(first, RecordCommands.all(equipment));
      case "inspect" -> List.of(InspectCommand.of(equipment));
      case "measure" -> List.of(MeasureCommand.of(equipment));
      case "tool", "limit" -> one(first, InstrumentCommands.all(equipment));
      case "compare", "clearance", "sizes" -> one(first, SizeCommands.all(equipment));
      default -> later(first);
    };
  }

  private List<Command> later(String first) {
    return switch (first) {
      case "plan" -> PlanCommands.all(equipment);
      case "debris" -> DebrisCommands.all(equipment);
      case "decide" -> DecideCommands.all(equipment, in);
      case "fit" -> List.of(FitCommand.of(equipment, in));
      case "take-back", "cycles", "missing", "excuse", "close" ->
          one(first, FinishCommands.all(equipment, in));
      case "torque" -> TorqueCommands.all(equipment);
      case "timing" -> TimingCommands.all(equipment, in);
      case "check", "backup", "export", "import", "report" ->
          one(first, FileCommands.all(equipment));
      case "workings" -> List.of(WorkingsCommand.of());
      case "completion", "man" -> one(first, HelpTexts.commands(this));
      default -> List.of();
    };
  }

  private static List<Command> one(String first, List<Command> commands) {
    return commands.stream()
        .filter(command -> (command.name() + " ").startsWith(first + " "))
        .toList();
  }
}
