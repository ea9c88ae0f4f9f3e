package wherefrom.cli;

import java.io.BufferedReader;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Stack;
import java.util.function.Predicate;
import picocli.CommandLine.Help;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import wherefrom.job.ports.Services;

/** The words of a call, read by picocli. */
final class Call {
  /** A page of text; paths are shorter on every system. */
  private static final int MOST_LETTERS = 4_000;

  private static final int SHOWN = 40;
  private static final int ONE_LINE = 10_000;
  private static final String END_OF_OPTIONS = "--";

  private final Command command;
  private final Services services;
  private final BufferedReader in;
  private final Map<String, List<String>> options = new LinkedHashMap<>();
  private final List<String> operands = new ArrayList<>();

  private Call(Command command, Services services, BufferedReader in) {
    this.command = command;
    this.services = services;
    this.in = in;
  }

  /**
   * @param words what follows the command's name; behind {@code --} everything is an operand
   * @param in where codes come from that are not in the call
   */
  static Call of(Command command, List<String> words, Services services, BufferedReader in)
      throws BadInput {
    Call call = new Call(command, services, in);
    call.requireShort(words);
    try {
      call.read(words);
    } catch (MissingParameterException e) {
      call.requireKnown(words);
      throw call.missing(e.getMissing().get(0));
    } catch (UnmatchedArgumentException e) {
      call.requireKnown(words);
      throw call.wrong(
          "Nothing more is expected here, but \"" + e.getUnmatched().get(0) + "\" is given.");
    } catch (ParameterException e) {
      throw call.wrong(String.valueOf(e.getMessage()));
    }
    call.requireKnown(words);
    return call;
  }

  /** An operand that begins with @ names no file of words. */
  private void read(List<String> words) {
    new picocli.CommandLine(command.spec(this::take))
        .setExpandAtFiles(false)
        .parseArgs(words.toArray(String[]::new));
  }

  /** The words that may be options. */
  static List<String> beforeEnd(List<String> words) {
    int end = words.indexOf(END_OF_OPTIONS);
    return end < 0 ? words : words.subList(0, end);
  }

  private void requireShort(List<String> words) throws BadInput {
    for (String word : words) {
      if (word.length() > MOST_LETTERS) {
        String shown = word.substring(0, SHOWN);
        throw wrong("\"" + shown + "…\" is longer than " + MOST_LETTERS + " letters: shorten it.");
      }
    }
  }

  /** A word with one hyphen may be a figure; with two it is an option, or a slip. */
  private void requireKnown(List<String> words) throws BadInput {
    List<String> known = command.allOptions().stream().map(Option::name).toList();
    for (String word : beforeEnd(words)) {
      String name = word.split("=", 2)[0];
      if (word.startsWith(END_OF_OPTIONS) && !known.contains(name)) {
        throw wrong("There is no option " + name + " here." + Nearest.question(name, known));
      }
    }
  }

  /** Takes what belongs to an option, or one operand. */
  private boolean take(
      Stack<String> args, CommandSpec spec, ArgSpec arg, Map<String, Object> info) {
    if (!(arg instanceof OptionSpec)) {
      operands.add(args.pop());
      return true;
    }
    Option option = option(arg);
    List<String> values = options.computeIfAbsent(option.name(), any -> new ArrayList<>());
    if (!values.isEmpty() && !option.many()) {
      throw new ParameterException(spec.commandLine(), option.name() + " stands twice.");
    }
    List<String> found = values(option, "=".equals(info.get("separator")), args);
    if (found.isEmpty()) {
      String needed = option.name() + " needs " + option.value() + ": " + option.help() + ".";
      throw new ParameterException(spec.commandLine(), needed);
    }
    values.addAll(found);
    return true;
  }

  /** A flag has one value that says nothing, so that a script may write {@code --json=true}. */
  private static List<String> values(Option option, boolean attached, Stack<String> args) {
    if (attached || option.isFlag()) {
      return List.of(attached ? args.pop() : "");
    }
    List<String> values = new ArrayList<>();
    while (isValue(args) && (option.many() || values.isEmpty())) {
      values.add(args.pop());
    }
    return values;
  }

  private static boolean isValue(Stack<String> args) {
    return !args.isEmpty() && !args.peek().startsWith(END_OF_OPTIONS);
  }

  private Option option(ArgSpec arg) {
    Predicate<Option> same = option -> option.name().equals(((OptionSpec) arg).longestName());
    return command.allOptions().stream().filter(same).findFirst().orElseThrow();
  }

  private BadInput missing(ArgSpec arg) {
    Option option = option(arg);
    return wrong("Give " + option.label() + ": " + option.help() + ".");
  }

  /** What is wrong, with the usage behind it. */
  BadInput wrong(String sentence) {
    CommandSpec spec = command.spec((args, of, arg, info) -> false);
    spec.usageMessage().width(ONE_LINE);
    Help help = new Help(spec, Help.defaultColorScheme(Help.Ansi.OFF));
    return new BadInput(sentence, "Usage: " + help.synopsis(0).strip());
  }

  /** What the command works with. */
  Services services() {
    return services;
  }

  /** Standard input. */
  BufferedReader in() {
    return in;
  }

  boolean has(Option option) {
    return options.containsKey(option.name());
  }

  Optional<String> find(String option) {
    return all(option).stream().findFirst();
  }

  Optional<String> find(Option option) {
    return find(option.name());
  }

  /** The value of an option; empty where it is not given. */
  String text(String option) {
    return find(option).orElse("");
  }

  /** The value of an option that the usage requires. */
  String get(String option) throws BadInput {
    return find(option).orElseThrow(() -> wrong("Give " + option + "."));
  }

  String get(Option option) throws BadInput {
    return get(option.name());
  }

  /** Every value of an option; commas part values too. */
  List<String> listed(String option) {
    return all(option).stream()
        .flatMap(value -> List.of(value.split(",")).stream())
        .map(String::strip)
        .filter(value -> !value.isEmpty())
        .toList();
  }

  /** Every value of an option, as given. */
  List<String> all(String option) {
    return options.getOrDefault(option, List.of());
  }

  Path path(String option) throws BadInput {
    return path(option, get(option));
  }

  /** An option's path from the root, without dots. */
  Path wholePath(String option) throws BadInput {
    return path(option).toAbsolutePath().normalize();
  }

  Path path(String what, String text) throws BadInput {
    if (text.isBlank()) {
      throw wrong(what + " is empty: give a path.");
    }
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw wrong(what + ": \"" + text + "\" is not a path.");
    }
  }

  /** A whole number within a range; the value for none where the option is not given. */
  int number(String option, int none, int least, int most) throws BadInput {
    Optional<String> text = find(option);
    if (text.isEmpty()) {
      return none;
    }
    try {
      int number = Integer.parseInt(text.get());
      if (number >= least && number <= most) {
        return number;
      }
    } catch (NumberFormatException e) {
      // Said below, with the range.
    }
    throw wrong(
        option
            + ": \""
            + text.get()
            + "\" is not a whole number from "
            + least
            + " to "
            + most
            + ".");
  }

  List<String> operands() {
    return List.copyOf(operands);
  }

  /** The one operand; where there is none, or more, a sentence asks for it. */
  String operand(String asking) throws BadInput {
    if (operands.size() != 1) {
      throw wrong(asking);
    }
    return operands.get(0);
  }
}
