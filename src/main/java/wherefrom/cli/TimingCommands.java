package wherefrom.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wherefrom.engine.Spots;
import wherefrom.engine.ValveSpot;
import wherefrom.job.numbers.Kept;
import wherefrom.job.numbers.WorkingBook;
import wherefrom.job.ports.Equipment;
import wherefrom.job.timing.LiftReading;
import wherefrom.job.timing.TimingBook;
import wherefrom.job.timing.TimingCheck;
import wherefrom.job.timing.TimingSetting;
import wherefrom.quantity.Unit;
import wherefrom.workings.MissingInputs;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Result;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingAnswer;
import wherefrom.workings.catalogue.timing.CamSlack;
import wherefrom.workings.catalogue.timing.ChainDeflection;
import wherefrom.workings.timing.Comparison;
import wherefrom.workings.timing.TimingValue;

/** The timing check: chain, slack, dial readings over a degree wheel beside the cam card. */
final class TimingCommands {
  private static final String ZERO =
      "Angles are crank degrees from top dead centre, the way the engine turns: minus before it,"
          + " 180 more after bottom dead centre.";
  private static final Option LOBE = Option.needed("--lobe", "1IN", "the lobe, such as 1IN or 1EX");
  private static final Option CYLINDER = Option.needed("--cylinder", "N", "the cylinder");

  private final Equipment equipment;
  private final BufferedReader in;

  private TimingCommands(Equipment equipment, BufferedReader in) {
    this.equipment = equipment;
    this.in = in;
  }

  static List<Command> all(Equipment equipment, BufferedReader in) {
    TimingCommands timing = new TimingCommands(equipment, in);
    return List.of(
        timing.working("timing chain", new ChainDeflection()),
        timing.working("timing slack", new CamSlack()),
        timing.set(),
        timing.read(),
        timing.remove(),
        timing.list(),
        timing.card(),
        timing.show());
  }

  private Command command(Usage usage, JobCommand.Deed deed) {
    return new JobCommand(usage, deed, equipment);
  }

  private Command working(String name, Working working) {
    String keys =
        working.card().inputs().stream()
            .map(input -> input.key() + ": " + input.meaning())
            .collect(Collectors.joining(System.lineSeparator()));
    return command(
        Usage.of(name, "KEY=VALUE…", working.card().title() + ", kept in the job.", Option.JOB)
            .noting(keys, "Source: " + working.card().source().text() + "."),
        (bench, call, answer) -> {
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
          return worked(book.answer(), answer);
        });
  }

  private static Status worked(WorkingAnswer worked, Answer answer) throws BadInput {
    if (worked instanceof Nonsense nonsense) {
      throw new BadInput(nonsense.sentence());
    }
    if (worked instanceof MissingInputs missing) {
      throw WorkingsCommand.missing(missing);
    }
    Result result = (Result) worked;
    answer.only(ResultFields.of(result), ResultFields.lines(result));
    return Status.RIGHT;
  }

  private static String[] pair(Call call, String text) throws BadInput {
    int equals = text.indexOf('=');
    if (equals < 1 || equals == text.length() - 1) {
      throw call.wrong("\"" + text + "\" wants a figure on both sides of its =.");
    }
    return new String[] {text.substring(0, equals).strip(), text.substring(equals + 1).strip()};
  }

  private static void kept(Kept kept) throws BadInput {
    if (kept instanceof Kept.Refused refused) {
      throw new BadInput(refused.sentence());
    }
  }

  private Command set() {
    List<Option> options = new ArrayList<>(List.of(Option.JOB));
    for (TimingSetting setting : TimingSetting.values()) {
      options.add(Option.maybe("--" + setting.key(), "FIGURE", setting.words()));
    }
    return command(
        Usage.of(
            "timing set",
            "",
            "Sets the stated lift, and how far wheel, dial and zero can be off.",
            options.toArray(Option[]::new)),
        (bench, call, answer) -> {
          TimingBook book = new TimingBook(bench.job());
          bench.asOne(
              () -> {
                for (TimingSetting setting : TimingSetting.values()) {
                  Optional<String> typed = call.find("--" + setting.key());
                  if (typed.isPresent()) {
                    kept(book.set(setting, typed.get()));
                  }
                }
              });
          Fields fields = Fields.of("lobes", book.lobes().size());
          List<String> lines = new ArrayList<>();
          for (TimingSetting setting : TimingSetting.values()) {
            String now = book.find(setting).map(amount -> amount.text()).orElse("not known");
            fields = fields.and(setting.key(), now);
            lines.add(Answer.cells(setting.key(), now));
          }
          answer.only(fields, lines);
          return Status.RIGHT;
        });
  }

  private static ValveSpot lobe(Bench bench, Call call) throws BadInput {
    String key = call.get(LOBE.name());
    return Spots.valves(bench.job().state().layout()).stream()
        .filter(lobe -> lobe.key().equalsIgnoreCase(key))
        .findFirst()
        .orElseThrow(() -> new BadInput("There is no lobe \"" + key + "\": give one like 1IN."));
  }

  private Command read() {
    return command(
        Usage.of(
                "timing read",
                "DEG=LIFT…|-",
                "Takes dial readings over one lobe; one at the same angle corrects the former.",
                Option.JOB,
                LOBE)
            .noting(ZERO, "timing read --job DIR --lobe 1IN 40=0.0512in 50=0.0836in"),
        (bench, call, answer) -> {
          ValveSpot lobe = lobe(bench, call);
          TimingBook book = new TimingBook(bench.job());
          List<String> texts = texts(call);
          bench.asOne(
              () -> {
                for (String text : texts) {
                  String[] pair = pair(call, text);
                  kept(book.read(lobe, pair[0], pair[1]));
                }
              });
          return said(book, lobe, answer);
        });
  }

  private List<String> texts(Call call) throws IOException {
    return call.operands().equals(List.of("-"))
        ? in.lines().map(String::strip).filter(line -> !line.isEmpty()).toList()
        : call.operands();
  }

  private static Status said(TimingBook book, ValveSpot lobe, Answer answer) {
    String words = new TimingCheck(book).words(lobe);
    int count = book.readings(lobe).size();
    answer.only(
        Fields.of("lobe", lobe.key()).and("readings", count).and("sentence", words),
        lobe.words() + ", readings " + count + ": " + words);
    return Status.RIGHT;
  }

  private Command remove() {
    return command(
        Usage.of(
            "timing remove",
            "",
            "Takes one reading out; take-back brings it again.",
            Option.JOB,
            LOBE,
            Option.needed("--at", "DEG", "its angle")),
        (bench, call, answer) -> {
          TimingBook book = new TimingBook(bench.job());
          kept(book.remove(lobe(bench, call), call.get("--at")));
          return said(book, lobe(bench, call), answer);
        });
  }

  private Command list() {
    return command(
        Usage.of("timing list", "", "Lists the readings over one lobe.", Option.JOB, LOBE),
        (bench, call, answer) -> {
          for (LiftReading each : new TimingBook(bench.job()).readings(lobe(bench, call))) {
            answer.row(
                Fields.of("degrees", each.degrees().in(Unit.DEGREE))
                    .and("lift", each.lift().text()),
                Answer.cells(each.degrees().text(), each.lift().text()));
          }
          return Status.RIGHT;
        });
  }

  private Command card() {
    String keys =
        Arrays.stream(TimingValue.values()).map(TimingValue::key).collect(Collectors.joining(", "));
    return command(
        Usage.of(
                "timing card",
                "KEY=DEG…",
                "Keeps what the cam card states, to be compared with.",
                Option.JOB,
                Option.needed("--source", "TEXT", "which card or manual, with the page"))
            .noting("Keys: " + keys + ".", ZERO),
        (bench, call, answer) -> {
          TimingBook book = new TimingBook(bench.job());
          List<TimingValue> values = new ArrayList<>();
          bench.asOne(
              () -> {
                kept(book.cardSource(call.get("--source")));
                for (String text : call.operands()) {
                  String[] pair = pair(call, text);
                  values.add(cardValue(call, pair[0]));
                  kept(book.card(values.get(values.size() - 1), pair[1]));
                }
              });
          for (TimingValue value : values) {
            double degrees = book.card(value).orElseThrow();
            answer.row(
                Fields.of("value", value.key()).and("degrees", degrees),
                Answer.cells(value.words(), value.said(degrees)));
          }
          return Status.RIGHT;
        });
  }

  private static TimingValue cardValue(Call call, String key) throws BadInput {
    return TimingValue.find(key)
        .orElseThrow(() -> call.wrong("There is no card value \"" + key + "\"."));
  }

  private Command show() {
    return command(
        Usage.of(
                "timing show",
                "",
                "Events, centre lines, duration and overlap of a cylinder beside the card.",
                Option.JOB,
                CYLINDER)
            .noting(
                "Exit status 1 while a lobe is open. Behind ± stands the standard uncertainty."),
        (bench, call, answer) -> {
          int most = bench.job().state().layout().cylinders().size();
          int cylinder = call.number(CYLINDER.name(), 1, 1, most);
          TimingCheck check = new TimingCheck(new TimingBook(bench.job()));
          for (String open : check.open(cylinder)) {
            answer.row(Fields.of("open", open), open);
          }
          check.compare(cylinder).forEach(each -> row(each, answer));
          check.notes(cylinder).forEach(note -> answer.row(Fields.of("note", note), note));
          return Status.stoppedIf(!check.open(cylinder).isEmpty());
        });
  }

  private static void row(Comparison each, Answer answer) {
    Fields fields =
        Fields.of("value", each.value().key())
            .and("degrees", each.found().degrees())
            .and("standardUncertainty", each.found().standardUncertainty())
            .and("words", each.foundWords())
            .and("differs", each.differs())
            .and("verdict", each.verdict());
    if (each.card().isPresent()) {
      fields = fields.and("card", each.card().getAsDouble());
    }
    answer.row(
        fields,
        Answer.cells(each.value().words(), each.foundWords(), each.cardWords(), each.verdict()));
  }
}
