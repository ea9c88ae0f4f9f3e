package wherefrom.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import wherefrom.job.LogbookException;
import wherefrom.job.ports.Services;

/**
 * Runs one command for a script: exit status 0 right, 1 stopped, 2 bad input with a sentence on
 * standard error.
 */
public final class CommandLine {
  private static final Logger LOGGER = Logger.getLogger("wherefrom");
  private static final Set<String> HELP = Set.of("help", "--help", "-h");

  private final Services services;
  private final BufferedReader in;
  private final PrintStream out;
  private final PrintStream err;

  /**
   * @param in where codes come from that are not in the call
   */
  public CommandLine(Services services, BufferedReader in, PrintStream out, PrintStream err) {
    this.services = services;
    this.in = in;
    this.out = out;
    this.err = err;
  }

  /** Runs the command in these words and gives the exit status. */
  public int run(List<String> words) {
    if (words.isEmpty() || (HELP.contains(words.get(0)) && words.size() == 1)) {
      out.print(HelpTexts.overview());
      return Status.RIGHT.exit();
    }
    if (words.get(0).equals("--version")) {
      out.println("Wherefrom " + services.program().version());
      return Status.RIGHT.exit();
    }
    if (HELP.contains(words.get(0))) {
      return runCommand(asHelp(words.subList(1, words.size()))).exit();
    }
    return runCommand(words).exit();
  }

  /** {@code help fit} is {@code fit --help}. */
  private static List<String> asHelp(List<String> words) {
    return Stream.concat(words.stream(), Stream.of(Option.HELP.name())).toList();
  }

  private Status runCommand(List<String> called) {
    Answer answer = new Answer(out, err, asksForJson(called));
    try {
      Where where = Where.of(called);
      return runCommand(OldWords.today(where.words()), where.services(services), answer);
    } catch (BadInput e) {
      answer.refuse(e.sentence(), e.lines());
      return e.status();
    }
  }

  private Status runCommand(List<String> words, Services services, Answer answer) {
    Optional<Command> command = Commands.find(words);
    if (command.isEmpty()) {
      return unknown(words, answer);
    }
    try {
      return run(command.get(), words, services, answer);
    } catch (BadInput e) {
      answer.refuse(e.sentence(), e.lines());
      return e.status();
    } catch (LogbookException e) {
      return refused(answer, String.valueOf(e.getMessage()));
    } catch (IOException e) {
      return refused(answer, Faults.sentence(e));
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError | LinkageError e) {
      return failed(command.get(), e, answer);
    }
  }

  private Status run(Command command, List<String> words, Services services, Answer answer)
      throws BadInput, IOException {
    int name = command.name().split(" ").length;
    Call call = Call.of(command, words.subList(name, words.size()), services, in);
    if (call.has(Option.HELP)) {
      out.print(HelpTexts.of(command));
      return Status.RIGHT;
    }
    Status status = command.deed().run(call, answer);
    answer.finish();
    services.settings().faults().forEach(answer::say);
    return status;
  }

  /** A call that could not be read may have asked for JSON all the same. */
  private static boolean asksForJson(List<String> words) {
    return Call.beforeEnd(words).stream()
        .anyMatch(word -> word.split("=", 2)[0].equals(Option.JSON.name()));
  }

  private static Status failed(Command command, Throwable fault, Answer answer) {
    LOGGER.log(Level.SEVERE, "A command failed: " + command.name(), fault);
    return refused(
        answer,
        "This is a fault in Wherefrom, not in the call: "
            + fault
            + ". It is logged: wherefrom report --out F.txt writes it out.");
  }

  private static Status refused(Answer answer, String sentence) {
    answer.refuse(sentence, sentence);
    return Status.BAD_INPUT;
  }

  private Status unknown(List<String> words, Answer answer) {
    List<Command> family = Commands.family(words.get(0));
    if (family.isEmpty()) {
      String meant = Nearest.question(words.get(0), Commands.FIRST_WORDS);
      return refused(
          answer,
          "There is no command \""
              + words.get(0)
              + "\"."
              + meant
              + " wherefrom --help lists them.");
    }
    if (words.contains(Option.HELP.name()) || words.contains("-h")) {
      out.print(HelpTexts.of(words.get(0), family));
      return Status.RIGHT;
    }
    String names = String.join(", ", family.stream().map(Command::name).toList());
    return refused(answer, "Say which one: " + names + ".");
  }
}
