package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.AutoComplete;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;

/** What picocli makes of the commands: help, the completion of a shell, a manual page. */
final class HelpTexts {
  private static final String PROGRAM = "wherefrom";
  private static final int OVERVIEW = 140;
  private static final String PURPOSE =
      "Tags, verdicts and the arithmetic for rebuilding a used pushrod engine."
          + " Without arguments the window opens.";
  private static final String[] NOTES = {
    "",
    "Every command knows --help (or -h) and --json; --version tells the version. A code is a tag's"
        + " sixteen digits or the six that are typed; in place of codes, - reads them from standard"
        + " input, one a line. Exit status: 0 right, 1 stopped, 2 bad input with a sentence on"
        + " standard error, which --json says as {\"error\": …} too.",
    "",
    "Every command takes --shop postgresql://NAME@HOST/DATABASE, for jobs on a shared server (then"
        + " --job is a job's name there), --bench N, and --who NAME for who works there.",
    "",
    "Service information for your exact engine, and a qualified machinist, outrank this tool."
  };

  private HelpTexts() {}

  static List<Command> all() {
    return List.of(
        Command.of("completion", "Writes what completes the commands in bash and zsh.")
            .noting("wherefrom completion > ~/.wherefrom-completion, and source it from .bashrc.")
            .does((call, answer) -> answer.only(new Row.Said(completion()))),
        Command.of("man", "Writes the manual page, in the format of man.")
            .noting("wherefrom man > wherefrom.1; man ./wherefrom.1")
            .does((call, answer) -> answer.only(new Row.Said(manual()))));
  }

  static String of(Command command) {
    return help(command.spec((args, spec, arg, info) -> false));
  }

  /** A word that several commands begin with. */
  static String of(String first, List<Command> family) {
    CommandSpec spec = Command.spec(PROGRAM + " " + first, "");
    for (Command command : family) {
      String name = command.name().substring(first.length()).strip();
      spec.addSubcommand(name, Command.spec(name, command.summary()));
    }
    return help(spec);
  }

  /** Every command with its summary; their models are not made for it. */
  static String overview() {
    CommandSpec spec = Command.spec(PROGRAM, PURPOSE);
    List<String> lines = new ArrayList<>(List.of("", "Commands:"));
    for (Command command : Commands.all()) {
      String summary = Command.escaped(command.summary());
      lines.add(String.format(Locale.ROOT, "  %-15s %s", command.name(), summary));
    }
    lines.addAll(List.of(NOTES));
    spec.usageMessage()
        .customSynopsis("wherefrom COMMAND [OPTION…]")
        .footer(lines.toArray(String[]::new))
        .width(OVERVIEW);
    return help(spec);
  }

  private static String help(CommandSpec spec) {
    return new picocli.CommandLine(spec).getUsageMessage(Ansi.OFF);
  }

  /** Of the two words of a name, the second is a command within the first. */
  private static String completion() {
    CommandSpec root = CommandSpec.create().name(PROGRAM);
    for (String first : Commands.FIRST_WORDS) {
      List<Command> family = Commands.family(first);
      CommandSpec parent =
          family.get(0).name().equals(first)
              ? family.get(0).spec((args, of, arg, info) -> false).name(first)
              : CommandSpec.create().name(first);
      for (Command command : family) {
        String name = command.name().substring(first.length()).strip();
        if (!name.isEmpty()) {
          parent.addSubcommand(name, command.spec((args, of, arg, info) -> false).name(name));
        }
      }
      root.addSubcommand(first, parent);
    }
    return AutoComplete.bash(PROGRAM, new picocli.CommandLine(root));
  }

  private static String manual() {
    StringBuilder page = new StringBuilder(".TH WHEREFROM 1\n.SH NAME\nwherefrom \\- ");
    page.append(roff(PURPOSE)).append("\n.SH SYNOPSIS\n.B wherefrom\nCOMMAND [OPTION...]\n");
    page.append(".SH COMMANDS\n");
    Commands.all().forEach(command -> page.append(manual(command)));
    page.append(".SH NOTES\n");
    List.of(NOTES).forEach(note -> page.append(note.isEmpty() ? ".PP" : roff(note)).append('\n'));
    return page.toString();
  }

  private static String manual(Command command) {
    StringBuilder text =
        new StringBuilder(
            ".SS \"" + roff(command.name() + " " + command.operands()).strip() + "\"\n");
    text.append(roff(command.summary())).append('\n');
    for (Option option : command.allOptions()) {
      text.append(".TP\n.B ").append(roff(option.label().strip())).append('\n');
      text.append(roff(option.help())).append('\n');
    }
    command.notes().forEach(note -> text.append(".PP\n").append(roff(note)).append('\n'));
    return text.toString();
  }

  /** A hyphen that may be typed, and a line that is no order. */
  private static String roff(String text) {
    String plain = text.replace("\\", "\\e").replace("-", "\\-").replace("\"", "\\(dq");
    return plain.startsWith(".") || plain.startsWith("'") ? "\\&" + plain : plain;
  }
}
