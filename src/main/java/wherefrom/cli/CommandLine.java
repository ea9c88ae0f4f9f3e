package wherefrom.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import wherefrom.job.LogbookException;
import wherefrom.job.ports.Equipment;

/**
 * Runs one command for a script: exit status 0 right, 1 stopped, 2 bad input with a sentence on
 * standard error.
 */
public final class CommandLine {
  private static final Logger LOGGER = Logger.getLogger("wherefrom");
  private static final List<String> HELP = List.of("help");
  private static final Set<String> SHORT_HELP = Set.of("--help", "-h");

  private final Equipment equipment;
  private final List<Command> commands;
  private final PrintStream out;
  private final PrintStream err;

  /**
   * @param in where codes come from that are not in the call
   */
  public CommandLine(Equipment equipment, BufferedReader in, PrintStream out, PrintStream err) {
    this.equipment = equipment;
    this.commands = Commands.all(equipment, in);
    this.out = out;
    this.err = err;
  }

  /** Runs the command in these words and gives the exit status. */
  public int run(List<String> words) {
    if (words.isEmpty() || words.equals(HELP) || SHORT_HELP.contains(words.get(0))) {
      out.print(overview());
      return Status.RIGHT.exit();
    }
    if (words.get(0).equals("--version")) {
      out.println("Wherefrom " + equipment.program().version());
      return Status.RIGHT.exit();
    }
    if (words.get(0).equals("help")) {
      return help(words.subList(1, words.size())).exit();
    }
    return find(words).map(command -> run(command, words)).orElseGet(() -> unknown(words)).exit();
  }

  /** {@code help fit} is {@code fit --help}. */
  private Status help(List<String> words) {
    List<String> asked = Stream.concat(words.stream(), Stream.of(Option.HELP.name())).toList();
    return find(asked).map(command -> run(command, asked)).orElseGet(() -> unknown(asked));
  }

  private Optional<Command> find(List<String> words) {
    return commands.stream().filter(command -> startsWith(words, name(command))).findFirst();
  }

  private static List<String> name(Command command) {
    return List.of(command.usage().name().split(" "));
  }

  private static boolean startsWith(List<String> words, List<String> name) {
    return words.size() >= name.size() && words.subList(0, name.size()).equals(name);
  }

  private Status run(Command command, List<String> words) {
    try {
      List<String> rest = words.subList(name(command).size(), words.size());
      Call call = Call.of(command.usage(), rest);
      if (call.has(Option.HELP)) {
        out.println(command.usage().help());
        return Status.RIGHT;
      }
      Answer answer = new Answer(out, err, call.has(Option.JSON));
      Status status = command.run(call, answer);
      answer.finish();
      equipment.settings().faults().forEach(answer::say);
      return status;
    } catch (BadInput e) {
      err.println(e.sentence());
      return e.status();
    } catch (LogbookException e) {
      return refused(String.valueOf(e.getMessage()));
    } catch (IOException e) {
      return refused(Faults.sentence(e));
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError | LinkageError e) {
      LOGGER.log(Level.SEVERE, "A command failed: " + name(command), e);
      return refused(
          "This is a fault in Wherefrom, not in the call: "
              + e
              + ". It is logged: wherefrom report --out F.txt writes it out.");
    }
  }

  private Status refused(String sentence) {
    err.println(sentence);
    return Status.BAD_INPUT;
  }

  private Status unknown(List<String> words) {
    List<String> family =
        commands.stream()
            .map(command -> command.usage().name())
            .filter(name -> name.startsWith(words.get(0) + " "))
            .toList();
    if (!family.isEmpty() && words.contains(Option.HELP.name())) {
      family.forEach(name -> out.println("wherefrom " + name + " --help"));
      return Status.RIGHT;
    }
    return refused(
        family.isEmpty()
            ? "There is no command \"" + words.get(0) + "\". wherefrom --help lists them."
            : "Say which one: " + String.join(", ", family) + ".");
  }

  private String overview() {
    StringBuilder text = new StringBuilder();
    text.append(String.format(Locale.ROOT, "Without arguments the window opens.%n%n"));
    text.append(String.format(Locale.ROOT, "Usage: wherefrom COMMAND [OPTION…]%n%n"));
    for (Command command : commands) {
      Usage usage = command.usage();
      text.append(String.format(Locale.ROOT, "  %-15s %s%n", usage.name(), usage.summary()));
    }
    text.append(
        String.format(
            Locale.ROOT,
            "%nEvery command knows --help (or -h) and --json; --version tells the version. A code is a tag's sixteen digits or the six"
                + " that are typed;%nin place of codes, - reads them from standard input, one a"
                + " line. Exit status: 0 right, 1 stopped,%n2 bad input with a sentence on standard"
                + " error.%n%nPublished service information for the exact engine, and a qualified"
                + " machinist, outrank this tool.%n"));
    return text.toString();
  }
}
