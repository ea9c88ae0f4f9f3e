package wherefrom.rules.consequence;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import wherefrom.parts.PartKind;

/** One consequence of a rule, before it is applied to an engine. */
record Then(
    String name,
    Severity severity,
    Effect effect,
    Set<PartKind> kinds,
    Cover cover,
    Count count,
    String what,
    String sentence,
    Renewal renewal,
    Predicate<Setting> only) {

  Then {
    kinds = Set.copyOf(kinds);
  }

  Then only(Predicate<Setting> condition) {
    return new Then(
        name, severity, effect, kinds, cover, count, what, sentence, renewal, condition);
  }

  Then ofSort(String words) {
    return new Then(
        name, severity, effect, kinds, cover, count, words, sentence, Renewal.SORT, only);
  }

  Then because(Renewal why) {
    return new Then(name, severity, effect, kinds, cover, count, what, sentence, why, only);
  }

  /** Whether there is anything in this engine that it speaks of. */
  boolean speaksOf(Setting setting, Change change) {
    return only.test(setting) && (kinds.isEmpty() || setting.count(kinds, cover, change) > 0);
  }

  Consequence apply(Rule rule, List<Change> chain, Setting setting) {
    Change cause = chain.get(chain.size() - 1);
    int pieces =
        switch (effect) {
          case BUY -> count.in(setting.layout());
          case FORBIDDEN, MUST_BE_NEW -> setting.count(kinds, cover, cause);
          default -> 0;
        };
    return new Consequence(
        rule.number(),
        name,
        severity,
        effect,
        kinds,
        setting.listPlaces(kinds, cover, cause),
        pieces,
        what,
        sentence,
        renewal,
        rule.source(),
        chain);
  }
}
