package wherefrom.cli;

import java.io.IOException;
import java.util.List;
import wherefrom.engine.Spots;
import wherefrom.engine.ValveSpot;
import wherefrom.job.timing.LiftReading;
import wherefrom.job.timing.TimingBook;
import wherefrom.job.timing.TimingCheck;
import wherefrom.quantity.Unit;

/** The dial readings over one lobe. */
final class LobeCommands {
  private static final Option LOBE = Option.needed("--lobe", "1IN", "the lobe, such as 1IN or 1EX");

  private LobeCommands() {}

  private static ValveSpot lobe(OpenedJob bench, Call call) throws BadInput {
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

  static Command read() {
    return Command.of(
            "timing read",
            "Takes dial readings over one lobe; one at the same angle replaces the earlier one.",
            LOBE)
        .takes("DEG=LIFT…|-")
        .noting(TimingCommands.ZERO, "timing read --job DIR --lobe 1IN 40=0.0512in 50=0.0836in")
        .tells(LobeCommands::read);
  }

  private static Row read(OpenedJob bench, Call call) throws BadInput, IOException {
    ValveSpot lobe = lobe(bench, call);
    TimingBook book = new TimingBook(bench.job());
    List<String> texts = texts(call);
    bench.asOne(
        () -> {
          for (String text : texts) {
            String[] pair = TimingCommands.pair(call, text);
            TimingCommands.kept(book.read(lobe, pair[0], pair[1]));
          }
        });
    return LobeRow.of(book, lobe);
  }

  private static List<String> texts(Call call) throws IOException {
    return call.operands().equals(List.of("-"))
        ? call.in().lines().map(String::strip).filter(line -> !line.isEmpty()).toList()
        : call.operands();
  }

  static Command remove() {
    return Command.of(
            "timing remove",
            "Takes one reading out; undo brings it back.",
            LOBE,
            Option.needed("--at", "DEG", "its angle"))
        .tells(
            (bench, call) -> {
              TimingBook book = new TimingBook(bench.job());
              TimingCommands.kept(book.remove(lobe(bench, call), call.get("--at")));
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

  static Command list() {
    return Command.of("timing list", "Lists the readings over one lobe.", LOBE)
        .lists(
            (bench, call) ->
                new TimingBook(bench.job())
                    .readings(lobe(bench, call)).stream().map(ReadingRow::of));
  }
}
