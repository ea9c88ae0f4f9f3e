package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import wherefrom.inspection.Look;
import wherefrom.job.inspect.DebrisBook;
import wherefrom.rules.debris.Clue;
import wherefrom.rules.debris.DebrisFind;
import wherefrom.rules.debris.DebrisLook;
import wherefrom.rules.debris.DebrisMap;
import wherefrom.rules.debris.DebrisPlace;
import wherefrom.rules.debris.MainsQuestion;
import wherefrom.rules.debris.Opening;

/** What was found in the oil, what to open next, and whether it reached the mains. */
final class DebrisCommands {
  private DebrisCommands() {}

  static List<Command> all() {
    return List.of(
        Command.of(
                "debris found",
                "Records what was found where, and says what to suspect.",
                Option.maybe("--note", "TEXT", "what else is to be said of it"))
            .takes("PLACE WHAT")
            .noting(
                "Places: " + Names.all(List.of(DebrisPlace.values())) + ".",
                "What: " + Names.all(List.of(DebrisLook.values())) + ".")
            .tells(DebrisCommands::found),
        Command.of(
                "debris opened",
                "Records that something was opened and looked at.",
                Option.needed("--answer", "ANSWER", "pass, suspect or fail"),
                Option.maybe("--note", "TEXT", "what was seen"))
            .takes("OPENING")
            .noting("Openings: " + Names.all(List.of(Opening.values())) + ".")
            .tells(DebrisCommands::opened),
        Command.of(
                "debris map",
                "What was found, what it points to, what to open next, the cheapest first.")
            .noting("Exit status 1 while it is open whether it reached the mains.")
            .onJob(DebrisCommands::map));
  }

  private static Row found(OpenedJob bench, Call call) throws BadInput {
    if (call.operands().size() != 2) {
      throw call.wrong("Give a place and what was found.");
    }
    DebrisPlace place = Names.find(DebrisPlace.class, "place", call.operands().get(0));
    DebrisLook look = Names.find(DebrisLook.class, "kind of debris", call.operands().get(1));
    new DebrisBook(bench.job()).found(place, look, call.text("--note"));
    String suspect = DebrisMap.suspect(new DebrisFind(place, look)).sentence();
    return new Row.Told(
        suspect, Json.object("place", Names.of(place), "what", Names.of(look), "suspect", suspect));
  }

  private static Row opened(OpenedJob bench, Call call) throws BadInput {
    String what = call.operand("Give one opening.");
    Opening opening = Names.find(Opening.class, "opening", what);
    Look look = Names.find(Look.class, "answer", call.get("--answer"));
    DebrisBook book = new DebrisBook(bench.job());
    book.opened(opening, look, call.text("--note"));
    return MainsRow.of(book.map().question());
  }

  private record MainsRow(
      String mains, List<String> askedBy, List<String> answeredBy, List<String> wanted)
      implements Row {
    static MainsRow of(MainsQuestion question) {
      return new MainsRow(
          question.answer().words(), question.openedBy(), question.answeredBy(), question.wanted());
    }

    @Override
    public String text() {
      List<String> lines = new ArrayList<>();
      lines.add("Did it reach the mains? " + mains + ".");
      answeredBy.forEach(look -> lines.add("answered by\t" + look));
      wanted.forEach(look -> lines.add("still to look at\t" + look));
      return Row.lines(lines);
    }
  }

  private record MapRow(
      List<String> suspects,
      List<String> notes,
      List<String> openNext,
      MainsRow question,
      Row.Beside openings)
      implements Row {
    static MapRow of(DebrisBook book, DebrisMap map) {
      List<String> lines =
          map.openings().stream()
              .map(opening -> Names.of(opening) + "\t" + opening.sentence())
              .toList();
      return new MapRow(
          map.suspects().stream().map(Clue::sentence).toList(),
          book.finds().stream().flatMap(find -> notes(book, find)).toList(),
          map.openings().stream().map(Names::of).toList(),
          MainsRow.of(map.question()),
          new Row.Beside(Row.lines(lines)));
    }

    private static Stream<String> notes(DebrisBook book, DebrisFind find) {
      return book.notes(find).stream().map(note -> find.words() + ": " + note);
    }

    @Override
    public String text() {
      List<String> found = new ArrayList<>(suspects);
      notes.forEach(note -> found.add("noted\t" + note));
      return Row.lines(Row.lines(found), openings.text(), question.text());
    }
  }

  private static Status map(OpenedJob bench, Call call, Answer answer) {
    DebrisBook book = new DebrisBook(bench.job());
    DebrisMap map = book.map();
    answer.only(MapRow.of(book, map));
    return Status.stoppedIf(!map.question().wanted().isEmpty());
  }
}
