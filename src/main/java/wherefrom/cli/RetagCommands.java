package wherefrom.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wherefrom.inspection.match.PartMatch;
import wherefrom.job.shop.Retagging;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;

/** Parts that came back without their tags, told by what was measured on them before. */
final class RetagCommands {
  private static final String READINGS = "MARK=SIZE[:SIZE]…";
  private static final Option KIND = Option.needed("--kind", "KIND", "the kind of part");
  private static final Option BY =
      Option.needed("--with", "PLAN=TOOL[,PLAN=TOOL]…", "the readings taken now and the tool");

  private RetagCommands() {}

  static List<Command> all() {
    return List.of(
        Command.of(
                "retag propose",
                "Tells which part each untagged one may be; nothing is recorded.",
                KIND,
                BY)
            .takes(READINGS)
            .noting(
                "One size for each plan of --with, in the same order, with a colon between"
                    + " them.")
            .lists(
                (bench, call) ->
                    matches(bench, call).stream().map(match -> MatchRow.of(bench, match))),
        Command.of(
                "retag accept",
                "Accepts a match: the part is back, and gets a new issue of its tag.",
                KIND,
                BY,
                Option.needed("--mark", "MARK", "the untagged part"),
                Option.maybe(
                    "--as", "ITEM", "the part that you say it is; else the match proposed"))
            .takes(READINGS)
            .noting("Without --as only a match that is certain or likely is accepted.")
            .tells(RetagCommands::accept));
  }

  private record Accepted(String mark, int item, String part, String code) implements Row {
    @Override
    public String text() {
      return Answer.cells(mark, code, part);
    }
  }

  private static Row accept(OpenedJob bench, Call call) throws BadInput {
    PartMatch match = match(bench, call);
    int item = call.number("--as", 0, 1, 9999);
    if (item == 0 && !isTold(match)) {
      String told = MatchRow.of(bench, match).text().replace('\t', ' ');
      throw new BadInput(told + ": say with --as which it is.");
    }
    int chosen = item == 0 ? Integer.parseInt(match.best()) : item;
    Retagging.Answer came = new Retagging(bench.job()).accept(match, chosen);
    if (came instanceof Retagging.Answer.Refused refused) {
      throw new BadInput(refused.sentence());
    }
    Part part = bench.state().getPart(chosen).part();
    return new Accepted(match.found(), chosen, part.words(), bench.digits(part));
  }

  private static boolean isTold(PartMatch match) {
    return match.certainty() == PartMatch.Certainty.CERTAIN
        || match.certainty() == PartMatch.Certainty.LIKELY;
  }

  private static PartMatch match(OpenedJob bench, Call call) throws BadInput {
    String mark = call.get("--mark");
    return matches(bench, call).stream()
        .filter(one -> one.found().equals(mark))
        .findFirst()
        .orElseThrow(() -> call.wrong("--mark: there is no reading for " + mark + "."));
  }

  private static List<PartMatch> matches(OpenedJob bench, Call call) throws BadInput {
    String word = call.get("--kind");
    PartKind kind =
        PartKind.find(word)
            .orElseThrow(() -> call.wrong("--kind: there is no kind \"" + word + "\"."));
    Map<String, String> tools = tools(call);
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

  private static Map<String, String> tools(Call call) throws BadInput {
    Map<String, String> tools = new LinkedHashMap<>();
    for (String by : call.listed("--with")) {
      String[] pair = by.split("=", 2);
      if (pair.length < 2) {
        throw call.wrong("--with: \"" + by + "\" is not PLAN=TOOL.");
      }
      tools.put(pair[0], pair[1]);
    }
    return tools;
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

  private static String words(OpenedJob bench, String item) {
    return bench.job().state().getPart(Integer.parseInt(item)).part().words();
  }

  private record MatchRow(
      String mark,
      String certainty,
      int item,
      String part,
      double confidence,
      String runnerUp,
      double runnerUpConfidence,
      Row.Beside told)
      implements Row {
    static MatchRow of(OpenedJob bench, PartMatch match) {
      return new MatchRow(
          match.found(),
          match.certainty().name().toLowerCase(Locale.ROOT),
          Integer.parseInt(match.best()),
          words(bench, match.best()),
          match.confidence(),
          match.runnerUp().map(item -> words(bench, item)).orElse(""),
          match.runnerUpConfidence(),
          new Row.Beside(told(bench, match)));
    }

    private static String told(OpenedJob bench, PartMatch match) {
      List<String> cells = new ArrayList<>(List.of(match.found(), match.certainty().words()));
      if (match.certainty() != PartMatch.Certainty.MATCHES_NONE) {
        cells.add(words(bench, match.best()) + " " + PartMatch.percent(match.confidence()));
        match
            .runnerUp()
            .map(item -> words(bench, item) + " " + PartMatch.percent(match.runnerUpConfidence()))
            .ifPresent(next -> cells.add("next " + next));
      }
      return Answer.cells(cells.toArray());
    }
  }
}
