package wherefrom.rules.consequence;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** All consequence rules, and what follows from a change under them. */
public final class ConsequenceRules {
  private static final List<Rule> RULES =
      Stream.of(
              CamRules.ROWS,
              LifterRules.ROWS,
              ValvetrainRules.ROWS,
              ValveRules.ROWS,
              HeadAndDeckRules.ROWS,
              BlockRules.ROWS,
              CrankRules.ROWS,
              OtherPartsRules.ROWS,
              FindingRules.ROWS)
          .flatMap(List::stream)
          .toList();

  private ConsequenceRules() {}

  /** Every rule, in the order in which they are explained. */
  public static List<Rule> all() {
    return RULES;
  }

  /**
   * Everything that follows from a change: what its rules say, then what follows from the changes
   * that it leads to, each consequence once and with its chain of reasons.
   */
  public static List<Consequence> of(Change change, Setting setting) {
    Map<String, Consequence> found = new LinkedHashMap<>();
    Deque<List<Change>> chains = new ArrayDeque<>();
    Set<Change> seen = new HashSet<>();
    chains.add(List.of(change));
    while (!chains.isEmpty()) {
      List<Change> chain = chains.remove();
      Change cause = chain.get(chain.size() - 1);
      if (!seen.add(cause)) {
        continue;
      }
      for (Rule rule : RULES) {
        if (rule.when().contains(cause.kind()) && rule.only().test(setting)) {
          apply(rule, chain, setting, found);
          rule.leadsTo().forEach(next -> chains.add(longer(chain, next)));
        }
      }
    }
    return List.copyOf(found.values());
  }

  private static void apply(
      Rule rule, List<Change> chain, Setting setting, Map<String, Consequence> found) {
    Change cause = chain.get(chain.size() - 1);
    for (ConsequenceTemplate then : rule.thens()) {
      if (then.speaksOf(setting, cause)) {
        Consequence consequence = then.apply(rule, chain, setting);
        found.putIfAbsent(consequence.key() + consequence.effect(), consequence);
      }
    }
  }

  private static List<Change> longer(List<Change> chain, ChangeKind next) {
    List<Change> more = new ArrayList<>(chain);
    more.add(Change.at(next, chain.get(chain.size() - 1).where()));
    return more;
  }
}
