package wherefrom.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The words of a call, taken apart by its command's usage. */
final class Call {
  /** A page of text; paths are shorter on every system. */
  private static final int MOST_LETTERS = 4_000;

  private static final int SHOWN = 40;

  private final Usage usage;
  private final Map<String, List<String>> options = new LinkedHashMap<>();
  private final List<String> operands = new ArrayList<>();

  private Call(Usage usage) {
    this.usage = usage;
  }

  /**
   * @param words what follows the command's name; behind {@code --} everything is an operand
   */
  static Call of(Usage usage, List<String> words) throws BadInput {
    Call call = new Call(usage);
    call.requireShort(words);
    int at = 0;
    while (at < words.size()) {
      String word = words.get(at).equals("-h") ? Option.HELP.name() : words.get(at);
      if (word.equals("--")) {
        call.operands.addAll(words.subList(at + 1, words.size()));
        break;
      }
      at = word.startsWith("--") ? call.takeOption(words, at) : call.takeOperand(word, at);
    }
    if (!call.has(Option.HELP)) {
      call.requireAll();
    }
    return call;
  }

  private void requireShort(List<String> words) throws BadInput {
    for (String word : words) {
      if (word.length() > MOST_LETTERS) {
        throw wrong(
            "\""
                + word.substring(0, SHOWN)
                + "…\" is longer than "
                + MOST_LETTERS
                + " letters:"
                + " shorten it.");
      }
    }
  }

  private int takeOperand(String word, int at) {
    operands.add(word);
    return at + 1;
  }

  private int takeOption(List<String> words, int at) throws BadInput {
    String word = words.get(at).equals("-h") ? Option.HELP.name() : words.get(at);
    int equals = word.indexOf('=');
    String name = equals < 0 ? word : word.substring(0, equals);
    Option option =
        usage.findOption(name).orElseThrow(() -> wrong("There is no option " + name + " here."));
    List<String> values = options.computeIfAbsent(name, any -> new ArrayList<>());
    if (!values.isEmpty() && !option.many()) {
      throw wrong(name + " stands twice.");
    }
    if (option.isFlag()) {
      values.add("");
      return at + 1;
    }
    if (equals >= 0) {
      values.add(word.substring(equals + 1));
      return at + 1;
    }
    int next = at + 1;
    while (next < words.size() && !words.get(next).startsWith("--")) {
      values.add(words.get(next));
      next++;
      if (!option.many()) {
        break;
      }
    }
    if (next == at + 1) {
      throw wrong(name + " needs " + option.value() + ": " + option.help() + ".");
    }
    return next;
  }

  private void requireAll() throws BadInput {
    for (Option option : usage.options()) {
      if (option.required() && !has(option)) {
        throw wrong("Give " + option.usage() + ": " + option.help() + ".");
      }
    }
    if (usage.operands().isEmpty() && !operands.isEmpty()) {
      throw wrong("Nothing more is expected here, but \"" + operands.get(0) + "\" is given.");
    }
  }

  /** What is wrong, with the usage behind it. */
  BadInput wrong(String sentence) {
    return new BadInput(sentence + System.lineSeparator() + "Usage: " + usage.line());
  }

  boolean has(Option option) {
    return options.containsKey(option.name());
  }

  Optional<String> find(String option) {
    return all(option).stream().findFirst();
  }

  /** The value of an option that the usage requires. */
  String get(String option) throws BadInput {
    return find(option).orElseThrow(() -> wrong("Give " + option + "."));
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

  Path path(String what, String text) throws BadInput {
    if (text.isBlank()) {
      throw wrong(what + " is empty: give a path.");
    }
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw wrong(what + ": \"" + text + "\" is no path.");
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
        option + ": \"" + text.get() + "\" is no whole number from " + least + " to " + most + ".");
  }

  List<String> operands() {
    return List.copyOf(operands);
  }
}
