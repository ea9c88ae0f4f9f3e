package wherefrom.cli;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Every command; those that are not asked for are not made. */
final class Commands {
  /** What a call can begin with, in the order of the job. */
  static final List<String> FIRST_WORDS =
      List.of(
          "layouts",
          "stocks",
          "job",
          "demo",
          "resume",
          "places",
          "tags",
          "read",
          "out",
          "tray",
          "where",
          "wash",
          "back",
          "lost",
          "found",
          "note",
          "replace",
          "reprint",
          "took-out",
          "shop",
          "bag",
          "big",
          "retag",
          "money",
          "buy",
          "record",
          "inspect",
          "photo",
          "photos",
          "paper",
          "measure",
          "tool",
          "limit",
          "compare",
          "clearance",
          "sizes",
          "ring",
          "weight",
          "before",
          "casting",
          "start",
          "run",
          "service",
          "plan",
          "debris",
          "decide",
          "fit",
          "undo",
          "swaps",
          "to-fit",
          "leave-empty",
          "finish",
          "torque",
          "timing",
          "check",
          "backup",
          "export",
          "import",
          "workings",
          "report",
          "completion",
          "man");

  private Commands() {}

  static List<Command> all() {
    return FIRST_WORDS.stream().flatMap(word -> family(word).stream()).toList();
  }

  /** The command whose whole name a call begins with; of two the longer. */
  static Optional<Command> find(List<String> words) {
    return family(words.get(0)).stream()
        .filter(command -> startsWith(words, List.of(command.name().split(" "))))
        .max(Comparator.comparingInt(command -> command.name().length()));
  }

  private static boolean startsWith(List<String> words, List<String> name) {
    return words.size() >= name.size() && words.subList(0, name.size()).equals(name);
  }

  /** The commands whose names begin with a word. */
  static List<Command> family(String first) {
    return switch (first) {
      case "layouts", "stocks" -> one(first, LayoutCommands.all());
      case "job", "demo", "resume", "places" -> one(first, JobCommands.all());
      case "tags" -> List.of(TagsCommand.of());
      case "read" -> List.of(ReadCommand.of());
      case "tray" -> TrayCommands.all();
      case "out", "where", "back", "lost", "found", "note", "replace", "reprint", "took-out" ->
          one(first, PartCommands.all());
      case "wash" -> WashCommands.all();
      case "shop" -> ShopCommands.all();
      case "bag" -> BagCommands.all();
      case "big" -> BigPartCommands.all();
      case "retag" -> RetagCommands.all();
      case "money" -> MoneyCommands.all();
      case "buy" -> BuyCommands.all();
      case "record", "photo" -> one(first, RecordCommands.all());
      case "photos" -> List.of(PhotosCommand.of());
      case "paper" -> PaperCommands.all();
      case "inspect" -> List.of(InspectCommand.of());
      case "measure" -> List.of(MeasureCommand.of());
      case "tool", "limit" -> one(first, InstrumentCommands.all());
      case "compare", "clearance", "sizes" -> one(first, SizeCommands.all());
      default -> later(first);
    };
  }

  private static List<Command> later(String first) {
    return switch (first) {
      case "plan" -> PlanCommands.all();
      case "debris" -> DebrisCommands.all();
      case "decide" -> DecideCommands.all();
      case "fit" -> List.of(FitCommand.of());
      case "undo", "swaps", "to-fit", "leave-empty", "finish" -> one(first, FinishCommands.all());
      case "torque" -> TorqueCommands.all();
      case "ring" -> RingCommands.all();
      case "weight" -> WeightCommands.all();
      case "before" -> BeforeCommands.all();
      case "casting" -> CastingCommands.all();
      case "start" -> StartCommands.all();
      case "run" -> RunCommands.all();
      case "service" -> ServiceCommands.all();
      case "timing" -> TimingCommands.all();
      case "check", "backup", "export", "import", "report" -> one(first, FileCommands.all());
      case "workings" -> List.of(WorkingsCommand.of());
      case "completion", "man" -> one(first, HelpTexts.all());
      default -> List.of();
    };
  }

  private static List<Command> one(String first, List<Command> commands) {
    return commands.stream()
        .filter(command -> (command.name() + " ").startsWith(first + " "))
        .toList();
  }
}
