package wherefrom.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wherefrom.engine.Spots;
import wherefrom.engine.ValveSpot;
import wherefrom.job.ports.Equipment;
import wherefrom.job.numbers.Kept;
import wherefrom.job.numbers.WorkingBook;
import wherefrom.job.timing.LiftReading;
import wherefrom.job.timing.TimingBook;
import wherefrom.job.timing.TimingCheck;
import wherefrom.job.timing.TimingSetting;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
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

  private Command working(String name, Working working) {
    WorkingCard card = working.card();
    String keys =
        card.inputs().stream()
            .map(input -> input.key() + ": " + input.meaning())
            .collect(Collectors.joining(System.lineSeparator()));
    return Command.of(name, "KEY=VALUE…", card.title() + ", kept in the job.", Option.JOB)
        .noting(keys, "Source: " + card.source().text() + ".")
        .onJob(equipment, (bench, call, answer) -> work(working, bench, call, answer));
  }

  private static Status work(Working working, Bench bench, Call call, Answer answer)
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

  private record SettingsRow(int lobes, Map<String, String> settings) implements Row {
    static SettingsRow of(TimingBook book) {
      Map<String, String> settings = new LinkedHashMap<>();
      for (TimingSetting each : TimingSetting.values()) {
        settings.put(each.key(), book.find(each).map(Amount::text).orElse("not known"));
      }
      return new SettingsRow(book.lobes().size(), settings);
    }

    @Override
    public String text() {
      return settings.entrySet().stream()
          .map(each -> Answer.cells(each.getKey(), each.getValue()))
          .collect(Collectors.joining("\n"));
    }

    @Override
    public Map<String, Object> fields() {
      Map<String, Object> fields = Json.object("lobes", lobes);
      fields.putAll(settings);
      return fields;
    }
  }

  private Command set() {
    List<Option> options = new ArrayList<>(List.of(Option.JOB));
    for (TimingSetting setting : TimingSetting.values()) {
      options.add(Option.maybe("--" + setting.key(), "FIGURE", setting.words()));
    }
    return Command.of(
            "timing set",
            "",
            "Sets the stated lift, and how far wheel, dial and zero can be off.",
            options.toArray(Option[]::new))
        .tells(equipment, TimingCommands::set);
  }

  private static Row set(Bench bench, Call call) throws BadInput {
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
    return SettingsRow.of(book);
  }

  private static ValveSpot lobe(Bench bench, Call call) throws BadInput {
    String key = call.get(LOBE);
    return Spots.valves(bench.state().layout()).stream()
        .filter(lobe -> lobe.key().equalsIgnoreCase(key))
        .findFirst()
        .orElseThrow(() -> new BadInput("There is no lobe \"" + key + "\": give one like 1IN."));
  }

  private record LobeRow(String lobe, int readings, String sentence, Row.Beside words)
      implements Row {
    static LobeRow of(TimingBook book, ValveSpot lobe) {
      String sentence = new TimingCheck(book).words(lobe);
      int count = book.readings(lobe).size();
      return new LobeRow(lobe.key(), count, sentence, new Row.Beside(lobe.words()));
    }

    @Override
    public String text() {
      return words.text() + ", readings " + readings + ": " + sentence;
    }
  }

  private Command read() {
    return Command.of(
            "timing read",
            "DEG=LIFT…|-",
            "Takes dial readings over one lobe; one at the same angle corrects the former.",
            Option.JOB,
            LOBE)
        .noting(ZERO, "timing read --job DIR --lobe 1IN 40=0.0512in 50=0.0836in")
        .tells(equipment, this::read);
  }

  private Row read(Bench bench, Call call) throws BadInput, IOException {
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
    return LobeRow.of(book, lobe);
  }

  private List<String> texts(Call call) throws IOException {
    return call.operands().equals(List.of("-"))
        ? in.lines().map(String::strip).filter(line -> !line.isEmpty()).toList()
        : call.operands();
  }

  private Command remove() {
    return Command.of(
            "timing remove",
            "",
            "Takes one reading out; take-back brings it again.",
            Option.JOB,
            LOBE,
            Option.needed("--at", "DEG", "its angle"))
        .tells(
            equipment,
            (bench, call) -> {
              TimingBook book = new TimingBook(bench.job());
              kept(book.remove(lobe(bench, call), call.get("--at")));
              return LobeRow.of(book, lobe(bench, call));
            });
  }

  private record ReadingRow(double degrees, String lift, Row.Beside angle) implements Row {
    static ReadingRow of(LiftReading each) {
      Row.Beside angle = new Row.Beside(each.degrees().text());
      return new ReadingRow(each.degrees().in(Unit.DEGREE), each.lift().text(), angle);
    }

    @Override
    public String text() {
      return Answer.cells(angle.text(), lift);
    }
  }

  private Command list() {
    return Command.of("timing list", "", "Lists the readings over one lobe.", Option.JOB, LOBE)
        .lists(
            equipment,
            (bench, call) ->
                new TimingBook(bench.job())
                    .readings(lobe(bench, call)).stream().map(ReadingRow::of));
  }

  private record StatedRow(String value, double degrees, Row.Beside told) implements Row {
    static StatedRow of(TimingBook book, TimingValue value) {
      double degrees = book.card(value).orElseThrow();
      String told = Answer.cells(value.words(), value.said(degrees));
      return new StatedRow(value.key(), degrees, new Row.Beside(told));
    }

    @Override
    public String text() {
      return told.text();
    }
  }

  private Command card() {
    String keys =
        Arrays.stream(TimingValue.values()).map(TimingValue::key).collect(Collectors.joining(", "));
    return Command.of(
            "timing card",
            "KEY=DEG…",
            "Keeps what the cam card states, to be compared with.",
            Option.JOB,
            Option.needed("--source", "TEXT", "which card or manual, with the page"))
        .noting("Keys: " + keys + ".", ZERO)
        .lists(equipment, TimingCommands::card);
  }

  private static Stream<StatedRow> card(Bench bench, Call call) throws BadInput {
    TimingBook book = new TimingBook(bench.job());
    List<TimingValue> values = new ArrayList<>();
    bench.asOne(
        () -> {
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
    return TimingValue.find(key)
        .orElseThrow(() -> call.wrong("There is no card value \"" + key + "\"."));
  }

  private Command show() {
    return Command.of(
            "timing show",
            "",
            "Events, centre lines, duration and overlap of a cylinder beside the card.",
            Option.JOB,
            Option.needed("--cylinder", "N", "the cylinder"))
        .noting("Exit status 1 while a lobe is open. Behind ± stands the standard uncertainty.")
        .onJob(equipment, TimingCommands::show);
  }

  private static Status show(Bench bench, Call call, Answer answer) throws BadInput {
    int most = bench.state().layout().cylinders().size();
    int cylinder = call.number("--cylinder", 1, 1, most);
    TimingCheck check = new TimingCheck(new TimingBook(bench.job()));
    List<String> open = check.open(cylinder);
    open.stream().map(OpenRow::new).forEach(answer::row);
    check.compare(cylinder).stream().map(ComparedRow::of).forEach(answer::row);
    check.notes(cylinder).stream().map(NoteRow::new).forEach(answer::row);
    return Status.stoppedIf(!open.isEmpty());
  }

  private record OpenRow(String open) implements Row {
    @Override
    public String text() {
      return open;
    }
  }

  private record NoteRow(String note) implements Row {
    @Override
    public String text() {
      return note;
    }
  }

  private record ComparedRow(
      String value,
      double degrees,
      double standardUncertainty,
      String words,
      boolean differs,
      String verdict,
      Optional<Double> card,
      Row.Beside told)
      implements Row {
    static ComparedRow of(Comparison each) {
      Optional<Double> card =
          each.card().isPresent() ? Optional.of(each.card().getAsDouble()) : Optional.empty();
      String name = each.value().words();
      return new ComparedRow(
          each.value().key(),
          each.found().degrees(),
          each.found().standardUncertainty(),
          each.foundWords(),
          each.differs(),
          each.verdict(),
          card,
          new Row.Beside(
              Answer.cells(name, each.foundWords(), each.cardWords(), each.verdict())));
    }

    @Override
    public String text() {
      return told.text();
    }
  }
}
