package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How a command is called.
 *
 * @param name one or two words
 * @param operands what follows it, such as {@code CODE…}; empty for nothing
 * @param summary what it does, one sentence
 * @param options its own; {@code --json} and {@code --help} are every command's
 * @param notes what else is to be known, a line each
 */
record Usage(
    String name, String operands, String summary, List<Option> options, List<String> notes) {
  Usage {
    options = List.copyOf(options);
    notes = List.copyOf(notes);
  }

  static Usage of(String name, String operands, String summary, Option... options) {
    return new Usage(name, operands, summary, List.of(options), List.of());
  }

  Usage noting(String... lines) {
    return new Usage(name, operands, summary, options, List.of(lines));
  }

  /** Where codes are taken there is always a way to confirm a typed one. */
  List<Option> allOptions() {
    List<Option> all = new ArrayList<>(options);
    if (operands.contains("CODE") && !options.contains(Option.THIS_ENGINE)) {
      all.add(Option.THIS_ENGINE);
    }
    all.add(Option.JSON);
    all.add(Option.HELP);
    return all;
  }

  Optional<Option> findOption(String option) {
    return allOptions().stream().filter(known -> known.name().equals(option)).findFirst();
  }

  /** {@code wherefrom fit --job DIR PART PLACE…}. */
  String line() {
    StringBuilder line = new StringBuilder("wherefrom " + name);
    options.forEach(option -> line.append(' ').append(option.usage()));
    if (!operands.isEmpty()) {
      line.append(' ').append(operands);
    }
    return line.toString();
  }

  String help() {
    StringBuilder help = new StringBuilder(summary + System.lineSeparator());
    help.append(String.format(Locale.ROOT, "%nUsage: %s%n%n", line()));
    for (Option option : allOptions()) {
      String shown = option.isFlag() ? option.name() : option.name() + " " + option.value();
      help.append(String.format(Locale.ROOT, "  %-24s %s%n", shown, option.help()));
    }
    notes.forEach(note -> help.append(String.format(Locale.ROOT, "%n%s", note)));
    return help.toString().stripTrailing();
  }
}
