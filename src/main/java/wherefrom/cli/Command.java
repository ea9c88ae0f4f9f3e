package wherefrom.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.IParameterPreprocessor;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * A command: how it is called, and what it does.
 *
 * @param name one or two words
 * @param operands what follows it, such as {@code CODE…}; empty for nothing
 * @param summary what it does, one sentence
 * @param options its own; {@code --json} and {@code --help} are every command's
 * @param notes what else is to be known, a line each
 */
record Command(
    String name,
    String operands,
    String summary,
    List<Option> options,
    List<String> notes,
    Deed deed) {
  private static final String PROGRAM = "wherefrom";
  private static final int WIDTH = 100;
  private static final int LABELS = 30;

  /**
   * What a command does.
   *
   * <p>It throws {@link BadInput} when something in the call is wrong, and nothing was changed
   * then; an {@link IOException} carries a sentence, or what the system says of a file.
   */
  interface Deed {
    Status run(Call call, Answer answer) throws BadInput, IOException;
  }

  /** What a command does with an open job. */
  interface JobDeed {
    Status run(OpenedJob bench, Call call, Answer answer) throws BadInput, IOException;
  }

  /** The rows that a command lists of an open job. */
  interface Lister {
    Stream<? extends Row> list(OpenedJob bench, Call call) throws BadInput, IOException;
  }

  /** The one row that a command tells after what it did with an open job. */
  interface Teller {
    Row tell(OpenedJob bench, Call call) throws BadInput, IOException;
  }

  Command {
    options = List.copyOf(options);
    notes = List.copyOf(notes);
  }

  /** One that does nothing yet. */
  static Command of(String name, String summary, Option... options) {
    return new Command(
        name, "", summary, List.of(options), List.of(), (call, answer) -> Status.RIGHT);
  }

  Command takes(String what) {
    return new Command(name, what, summary, options, notes, deed);
  }

  Command noting(String... lines) {
    return new Command(name, operands, summary, options, List.of(lines), deed);
  }

  Command does(Deed what) {
    return new Command(name, operands, summary, options, notes, what);
  }

  /** It wants {@code --job}, and the job is open while it is done. */
  Command onJob(JobDeed what) {
    List<Option> all = Stream.concat(Stream.of(Option.JOB), options.stream()).toList();
    return new Command(
        name, operands, summary, all, notes, (call, answer) -> run(what, call, answer));
  }

  private static Status run(JobDeed what, Call call, Answer answer) throws BadInput, IOException {
    try (OpenedJob bench = OpenedJob.open(call, answer)) {
      return what.run(bench, call, answer);
    }
  }

  Command lists(Lister lister) {
    return onJob(
        (bench, call, answer) -> {
          lister.list(bench, call).forEach(answer::row);
          return Status.RIGHT;
        });
  }

  Command tells(Teller teller) {
    return onJob((bench, call, answer) -> answer.only(teller.tell(bench, call)));
  }

  /** Where codes are taken there is always a way to confirm a typed one. */
  List<Option> allOptions() {
    List<Option> all = new ArrayList<>(options);
    if (operands.contains("CODE") && !options.contains(Option.THIS_ENGINE)) {
      all.add(Option.THIS_ENGINE);
    }
    all.addAll(List.of(Option.JSON, Option.HELP));
    return all;
  }

  /** Its model for picocli, with the whole of its name. */
  CommandSpec spec(IParameterPreprocessor taker) {
    CommandSpec spec = spec(PROGRAM + " " + name, summary);
    allOptions().forEach(option -> spec.addOption(option.spec(taker)));
    if (!operands.isEmpty()) {
      spec.addPositional(
          PositionalParamSpec.builder()
              .index("0..*")
              .arity("0..*")
              .type(List.class)
              .paramLabel(operands)
              .hideParamSyntax(true)
              .preprocessor(taker)
              .build());
    }
    spec.usageMessage()
        .footer(
            notes.stream().flatMap(note -> Stream.of("", escaped(note))).toArray(String[]::new));
    return spec;
  }

  /** A model without options. */
  static CommandSpec spec(String name, String summary) {
    CommandSpec spec = CommandSpec.create().name(name);
    spec.parser()
        .posixClusteredShortOptionsAllowed(false)
        .unmatchedOptionsArePositionalParams(true);
    spec.usageMessage()
        .description(escaped(summary))
        .sortSynopsis(false)
        .sortOptions(false)
        .width(WIDTH)
        .longOptionsMaxWidth(LABELS);
    return spec;
  }

  /** picocli takes its texts for formats. */
  static String escaped(String text) {
    return text.replace("%", "%%");
  }
}
