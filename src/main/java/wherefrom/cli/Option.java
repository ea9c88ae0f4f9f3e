package wherefrom.cli;

import picocli.CommandLine.IParameterPreprocessor;
import picocli.CommandLine.Model.OptionSpec;

/**
 * An option of a command.
 *
 * @param name with its two hyphens
 * @param value what is to be given with it, such as {@code DIR}; empty for a flag
 * @param help what it does
 * @param required whether the command needs it
 * @param many whether several values may follow
 */
record Option(String name, String value, String help, boolean required, boolean many) {
  static final Option JOB = needed("--job", "DIR", "the job's folder");
  static final Option REASON = needed("--reason", "TEXT", "why");
  static final Option THIS_ENGINE =
      flag("--this-engine", "a typed code that fits another job's tag too is this engine's");
  static final Option JSON = flag("--json", "answer as one JSON document");
  static final Option HELP = flag("--help", "show this help");

  static Option needed(String name, String value, String help) {
    return new Option(name, value, help, true, false);
  }

  static Option maybe(String name, String value, String help) {
    return new Option(name, value, help, false, false);
  }

  static Option several(String name, String value, String help) {
    return new Option(name, value, help, false, true);
  }

  static Option flag(String name, String help) {
    return new Option(name, "", help, false, false);
  }

  boolean isFlag() {
    return value.isEmpty();
  }

  /** As it is asked for: {@code --job DIR}. */
  String label() {
    return name + " " + value + (many ? "…" : "");
  }

  OptionSpec spec(IParameterPreprocessor taker) {
    boolean isHelp = name.equals("--help");
    return OptionSpec.builder(isHelp ? new String[] {"-h", name} : new String[] {name})
        .type(isFlag() ? boolean.class : String.class)
        .arity(isFlag() ? "0" : "1")
        .paramLabel(value + (many ? "…" : ""))
        .hideParamSyntax(true)
        .description(Command.escaped(help))
        .required(required)
        .usageHelp(isHelp)
        .preprocessor(taker)
        .build();
  }
}
