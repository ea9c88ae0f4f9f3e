package wherefrom.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.job.numbers.WorkingBook;
import wherefrom.job.timing.TimingBook;
import wherefrom.job.timing.TimingCheck;
import wherefrom.job.timing.TimingSetting;
import wherefrom.quantity.Amount;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.catalogue.timing.CamSlack;
import wherefrom.workings.catalogue.timing.ChainDeflection;
import wherefrom.workings.timing.Comparison;
import wherefrom.workings.timing.TimingValue;

/** The timing check: chain, slack, dial readings over a degree wheel beside the cam card. */
final class TimingCommands {
  private static final String CHECKING_LIFT = "checking-lift";

  static final String ZERO =
      "Angles are crank degrees from top dead center, the way the engine turns:"
          + " minus before it, 180 more after bottom dead center.";

  private TimingCommands() {}

  static List<Command> all() {
    return List.of(
        working("timing chain", new ChainDeflection()),
        working("timing slack", new CamSlack()),
        set(),
        LobeCommands.read(),
        LobeCommands.remove(),
        LobeCommands.list(),
        card(),
        show());
  }

  private static Command working(String name, Working working) {
    WorkingCard card = working.card();
    String keys =
        card.inputs().stream()
            .map(input -> input.key() + ": " + input.meaning())
            .collect(Collectors.joining(System.lineSeparator()));
    return Command.of(name, card.title() + ", kept in the job.")
        .takes("KEY=VALUE…")
        .noting(keys, "Source: " + card.source().text() + ".")
        .onJob((bench, call, answer) -> work(working, bench, call, answer));
  }

  private static Status work(Working working, OpenedJob bench, Call call, Answer answer)
      throws BadInput {
    WorkingBook book = new WorkingBook(working, Optional.of(bench.job()));
    bench.asOne(
        () -> {
          for (String text : call.operands()) {
            String[] pair = pair(call, text);
            if (working.card().findInput(pair[0]).isEmpty()) {
              throw call.wrong("There is no figure \"" + pair[0] + "\" here.");
            }
            kept(book.set(pair[0], pair[1]));
          }
        });
    return WorkingsCommand.worked(book.answer(), answer);
  }

  static String[] pair(Call call, String text) throws BadInput {
    int equals = text.indexOf('=');
    if (equals < 1 || equals == text.length() - 1) {
      throw call.wrong("\"" + text + "\" wants a figure on both sides of its =.");
    }
    return new String[] {text.substring(0, equals).strip(), text.substring(equals + 1).strip()};
  }

  static void kept(FigureOutcome kept) throws BadInput {
    if (kept instanceof FigureOutcome.Refused refused) {
      throw new BadInput(refused.sentence());
    }
  }

  private record SettingsRow(int lobes, Map<String, String> settings) implements Row {
    static SettingsRow of(TimingBook book) {
      Map<String, String> settings = new LinkedHashMap<>();
      for (TimingSetting each : TimingSetting.values()) {
        settings.put(name(each), book.find(each).map(Amount::text).orElse("not known"));
      }
      return new SettingsRow(book.lobes().size(), settings);
    }

    @Override
    public String text() {
      return settings.entrySet().stream()
          .map(each -> Answer.cells(each.getKey(), each.getValue()))
          .collect(Collectors.joining(System.lineSeparator()));
    }

    @Override
    public Map<String, Object> fields() {
      Map<String, Object> fields = Json.object("lobes", lobes);
      fields.putAll(settings);
      // Scripts of before read it under the word of the logbook.
      fields.put(TimingSetting.STATED_LIFT.key(), settings.get(CHECKING_LIFT));
      return fields;
    }
  }

  private static Command set() {
    List<Option> options = new ArrayList<>();
    for (TimingSetting setting : TimingSetting.values()) {
      options.add(Option.maybe(option(setting), "FIGURE", setting.words()));
    }
    return Command.of(
            "timing set",
            "Sets the checking lift, and the errors of wheel, dial and zero.",
            options.toArray(Option[]::new))
        .tells(TimingCommands::set);
  }

  private static String option(TimingSetting setting) {
    return "--" + name(setting);
  }

  /** {@code checking-lift}, as cam cards call it: the logbook has another word for it. */
  private static String name(TimingSetting setting) {
    return setting == TimingSetting.STATED_LIFT ? CHECKING_LIFT : setting.key();
  }

  private static Row set(OpenedJob bench, Call call) throws BadInput {
    TimingBook book = new TimingBook(bench.job());
    bench.asOne(
        () -> {
          for (TimingSetting setting : TimingSetting.values()) {
            Optional<String> typed = call.find(option(setting));
            if (typed.isPresent()) {
              kept(book.set(setting, typed.get()));
            }
          }
        });
    return SettingsRow.of(book);
  }

  private record StatedRow(String value, double degrees, Row.Beside told) implements Row {
    static StatedRow of(TimingBook book, TimingValue value) {
      double degrees = book.card(value).orElseThrow();
      String told = Answer.cells(value.words(), value.said(degrees));
      return new StatedRow(Names.of(value), degrees, new Row.Beside(told));
    }
  }

  private static Command card() {
    String keys =
        Arrays.stream(TimingValue.values()).map(Names::of).collect(Collectors.joining(", "));
    return Command.of(
            "timing card",
            "Keeps what the cam card states, to be compared with.",
            Option.needed("--source", "TEXT", "which card or manual, with the page"))
        .takes("KEY=DEG…")
        .noting("Keys: " + keys + ".", ZERO)
        .lists(TimingCommands::card);
  }

  private static Stream<StatedRow> card(OpenedJob bench, Call call) throws BadInput {
    TimingBook book = new TimingBook(bench.job());
    List<TimingValue> values = new ArrayList<>();
    bench.asOne(
        () -> {
          values.clear();
          kept(book.cardSource(call.get("--source")));
          for (String text : call.operands()) {
            String[] pair = pair(call, text);
            TimingValue value = cardValue(call, pair[0]);
            kept(book.card(value, pair[1]));
            values.add(value);
          }
        });
    return values.stream().map(value -> StatedRow.of(book, value));
  }

  private static TimingValue cardValue(Call call, String key) throws BadInput {
    return Arrays.stream(TimingValue.values())
        .filter(value -> Names.of(value).equals(Names.american(key)))
        .findFirst()
        .orElseThrow(() -> call.wrong("There is no card value \"" + key + "\"."));
  }

  private static Command show() {
    return Command.of(
            "timing show",
            "Shows events, centerlines, duration and overlap of a cylinder beside the card.",
            Option.needed("--cylinder", "N", "the cylinder"))
        .noting(
            "Exit status 1 while a lobe is open. The figure after ± is the standard"
                + " uncertainty.")
        .onJob(TimingCommands::show);
  }

  private static Status show(OpenedJob bench, Call call, Answer answer) throws BadInput {
    int most = bench.state().layout().cylinders().size();
    int cylinder = call.number("--cylinder", 1, 1, most);
    TimingCheck check = new TimingCheck(new TimingBook(bench.job()));
    List<String> open = check.open(cylinder);
    open.stream().map(OpenRow::new).forEach(answer::row);
    check.compare(cylinder).stream().map(ComparedRow::new).forEach(answer::row);
    check.notes(cylinder).stream().map(NoteRow::new).forEach(answer::row);
    return Status.stoppedIf(!open.isEmpty());
  }

  private record OpenRow(String open) implements Row {
    @Override
    public String text() {
      return open;
    }
  }

  private record NoteRow(String note) implements Row {}

  private record ComparedRow(Comparison each) implements Row {
    @Override
    public Map<String, Object> fields() {
      Map<String, Object> fields =
          Json.object(
              "value", Names.of(each.value()),
              "degrees", each.found().degrees(),
              "standardUncertainty", each.found().standardUncertainty(),
              "words", each.foundWords(),
              "differs", each.differs(),
              "verdict", each.verdict());
      each.card().ifPresent(card -> fields.put("card", card));
      return fields;
    }

    @Override
    public String text() {
      String value = each.value().words();
      return Answer.cells(value, each.foundWords(), each.cardWords(), each.verdict());
    }
  }
}
