package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import wherefrom.inspection.Look;
import wherefrom.job.inspect.DebrisBook;
import wherefrom.job.ports.Equipment;
import wherefrom.rules.debris.DebrisFind;
import wherefrom.rules.debris.DebrisLook;
import wherefrom.rules.debris.DebrisMap;
import wherefrom.rules.debris.DebrisPlace;
import wherefrom.rules.debris.MainsQuestion;
import wherefrom.rules.debris.Opening;

/** What was found in the oil, what to open next, and whether it reached the mains. */
final class DebrisCommands {
  private DebrisCommands() {}

  static List<Command> all(Equipment equipment) {
    return List.of(
        new JobCommand(
            Usage.of(
                    "debris found",
                    "PLACE LOOK",
                    "Records what lies where, and says what to suspect.",
                    Option.JOB,
                    Option.maybe("--note", "TEXT", "what else is to be said of it"))
                .noting(
                    "Places: " + Names.all(List.of(DebrisPlace.values())) + ".",
                    "Looks: " + Names.all(List.of(DebrisLook.values())) + "."),
            DebrisCommands::found,
            equipment),
        new JobCommand(
            Usage.of(
                    "debris opened",
                    "OPENING",
                    "Records that something was opened and looked at.",
                    Option.JOB,
                    Option.needed("--look", "LOOK", "pass, suspect or fail"),
                    Option.maybe("--note", "TEXT", "what was seen"))
                .noting("Openings: " + Names.all(List.of(Opening.values())) + "."),
            DebrisCommands::opened,
            equipment),
        new JobCommand(
            Usage.of(
                    "debris map",
                    "",
                    "What was found, what it points to, what to open next, the cheapest first.",
                    Option.JOB)
                .noting("Exit status 1 while it is open whether it reached the mains."),
            DebrisCommands::map,
            equipment));
  }

  private static Status found(Bench bench, Call call, Answer answer) throws BadInput {
    if (call.operands().size() != 2) {
      throw call.wrong("Give a place and a look.");
    }
    DebrisPlace place = Names.find(DebrisPlace.class, "place", call.operands().get(0));
    DebrisLook look = Names.find(DebrisLook.class, "look of debris", call.operands().get(1));
    new DebrisBook(bench.job()).found(place, look, call.find("--note").orElse(""));
    String suspect = DebrisMap.suspect(new DebrisFind(place, look));
    answer.only(
        Fields.of("place", Names.of(place)).and("look", Names.of(look)).and("suspect", suspect),
        suspect);
    return Status.RIGHT;
  }

  private static Status opened(Bench bench, Call call, Answer answer) throws BadInput {
    if (call.operands().size() != 1) {
      throw call.wrong("Give one opening.");
    }
    Opening opening = Names.find(Opening.class, "opening", call.operands().get(0));
    Look look = Names.find(Look.class, "answer", call.get("--look"));
    DebrisBook book = new DebrisBook(bench.job());
    book.opened(opening, look, call.find("--note").orElse(""));
    ask(answer, book.map().question());
    return Status.RIGHT;
  }

  private static void ask(Answer answer, MainsQuestion question) {
    answer.only(
        Fields.of("mains", question.answer().words())
            .and("askedBy", question.openedBy())
            .and("answeredBy", question.answeredBy())
            .and("wanted", question.wanted()),
        lines(question));
  }

  private static List<String> lines(MainsQuestion question) {
    List<String> lines = new ArrayList<>();
    lines.add("Did it reach the mains? " + question.answer().words() + ".");
    question.answeredBy().forEach(look -> lines.add("answered by\t" + look));
    question.wanted().forEach(look -> lines.add("still to be looked at\t" + look));
    return lines;
  }

  private static Status map(Bench bench, Call call, Answer answer) {
    DebrisMap map = new DebrisBook(bench.job()).map();
    List<String> lines = new ArrayList<>(map.suspects());
    map.openings().forEach(opening -> lines.add(Names.of(opening) + "\t" + opening.sentence()));
    lines.addAll(lines(map.question()));
    answer.only(
        Fields.of("suspects", map.suspects())
            .and("openNext", map.openings().stream().map(Names::of).toList())
            .and("mains", map.question().answer().words())
            .and("askedBy", map.question().openedBy())
            .and("answeredBy", map.question().answeredBy())
            .and("wanted", map.question().wanted()),
        lines);
    return Status.stoppedIf(!map.question().wanted().isEmpty());
  }
}
