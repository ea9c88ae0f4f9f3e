package wherefrom.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wherefrom.inspection.match.Match;
import wherefrom.job.ports.Equipment;
import wherefrom.job.shop.Retagging;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;

/** Parts that came back without their tags, told by what was measured on them before. */
final class RetagCommands {
  private static final String READINGS = "MARK=SIZE[:SIZE]…";
  private static final Option KIND = Option.needed("--kind", "KIND", "the kind of part");
  private static final Option BY =
      Option.needed("--by", "PLAN=TOOL[,PLAN=TOOL]…", "the readings taken now and the tool");

  private final Equipment equipment;

  private RetagCommands(Equipment equipment) {
    this.equipment = equipment;
  }

  static List<Command> all(Equipment equipment) {
    RetagCommands retag = new RetagCommands(equipment);
    return List.of(retag.propose(), retag.accept());
  }

  private Command propose() {
    return new JobCommand(
        Usage.of(
                "retag propose",
                READINGS,
                "Tells which part each untagged one may be; nothing is recorded.",
                Option.JOB,
                KIND,
                BY)
            .noting("A size for each plan of --by, in the same order, with a colon between them."),
        (bench, call, answer) -> {
          for (Match match : matches(bench, call)) {
            answer.row(fields(bench, match), cells(bench, match));
          }
          return Status.RIGHT;
        },
        equipment);
  }

  private Command accept() {
    return new JobCommand(
        Usage.of(
                "retag accept",
                READINGS,
                "You agree that an untagged part is the one proposed: it is back, and gets a new"
                    + " issue of its tag.",
                Option.JOB,
                KIND,
                BY,
                Option.needed("--mark", "MARK", "the untagged part that you agree on"),
                Option.maybe("--as", "ITEM", "the part that you say it is; else the one proposed"))
            .noting("Without --as only what is certain or likely can be agreed on."),
        RetagCommands::accept,
        equipment);
  }

  private static Status accept(Bench bench, Call call, Answer answer) throws BadInput {
    String mark = call.get("--mark");
    Match match =
        matches(bench, call).stream()
            .filter(one -> one.found().equals(mark))
            .findFirst()
            .orElseThrow(() -> call.wrong("--mark: there is no reading for " + mark + "."));
    boolean told =
        match.certainty() == Match.Certainty.CERTAIN || match.certainty() == Match.Certainty.LIKELY;
    int item = call.number("--as", 0, 1, 9999);
    if (item == 0 && !told) {
      throw new BadInput(cells(bench, match).replace('\t', ' ') + ": say with --as which it is.");
    }
    int chosen = item == 0 ? Integer.parseInt(match.best()) : item;
    Retagging.Answer came = new Retagging(bench.job()).accept(match, chosen);
    if (came instanceof Retagging.Answer.Refused refused) {
      throw new BadInput(refused.sentence());
    }
    Part part = bench.job().state().getPart(chosen).part();
    String digits = bench.book().of(part).digits();
    answer.only(
        Fields.of("mark", mark).and("item", chosen).and("part", part.words()).and("code", digits),
        Answer.cells(mark, digits, part.words()));
    return Status.RIGHT;
  }

  private static List<Match> matches(Bench bench, Call call) throws BadInput {
    String word = call.get("--kind");
    PartKind kind =
        PartKind.find(word)
            .orElseThrow(() -> call.wrong("--kind: there is no kind \"" + word + "\"."));
    Map<String, String> tools = new LinkedHashMap<>();
    for (String by : call.listed("--by")) {
      String[] pair = by.split("=", 2);
      if (pair.length < 2) {
        throw call.wrong("--by: \"" + by + "\" is not PLAN=TOOL.");
      }
      tools.put(pair[0], pair[1]);
    }
    Map<String, Map<String, String>> readings = readings(call, List.copyOf(tools.keySet()));
    Retagging retagging = new Retagging(bench.job());
    List<Integer> items =
        retagging.candidates(kind, tools.keySet()).stream().map(Part::item).toList();
    Retagging.Answer came = retagging.propose(items, tools, readings);
    if (came instanceof Retagging.Answer.Refused refused) {
      throw new BadInput(refused.sentence());
    }
    return ((Retagging.Answer.Proposed) came).matches();
  }

  private static Map<String, Map<String, String>> readings(Call call, List<String> plans)
      throws BadInput {
    Map<String, Map<String, String>> readings = new LinkedHashMap<>();
    for (String operand : call.operands()) {
      String[] pair = operand.split("=", 2);
      String[] sizes = pair.length < 2 ? new String[0] : pair[1].split(":", -1);
      if (sizes.length != plans.size()) {
        throw call.wrong("\"" + operand + "\" is not " + READINGS + ".");
      }
      Map<String, String> byPlan = new LinkedHashMap<>();
      for (int at = 0; at < sizes.length; at++) {
        byPlan.put(plans.get(at), sizes[at]);
      }
      readings.put(pair[0], byPlan);
    }
    return readings;
  }

  private static String part(Bench bench, String item) {
    return bench.job().state().getPart(Integer.parseInt(item)).part().words();
  }

  private static Fields fields(Bench bench, Match match) {
    return Fields.of("mark", match.found())
        .and("certainty", match.certainty().name().toLowerCase(Locale.ROOT))
        .and("item", Integer.parseInt(match.best()))
        .and("part", part(bench, match.best()))
        .and("confidence", match.confidence())
        .and("runnerUp", match.runnerUp().map(item -> part(bench, item)).orElse(""))
        .and("runnerUpConfidence", match.runnerUpConfidence());
  }

  private static String cells(Bench bench, Match match) {
    List<String> cells = new ArrayList<>(List.of(match.found(), match.certainty().words()));
    if (match.certainty() != Match.Certainty.MATCHES_NONE) {
      cells.add(part(bench, match.best()) + " " + Match.percent(match.confidence()));
      Optional<String> next = match.runnerUp().map(item -> part(bench, item));
      next.ifPresent(
          words -> cells.add("next " + words + " " + Match.percent(match.runnerUpConfidence())));
    }
    return Answer.cells(cells.toArray(String[]::new));
  }
}
