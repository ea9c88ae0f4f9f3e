package wherefrom.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.parts.Part;
import wherefrom.rules.Ban;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.ConsequenceRules;
import wherefrom.rules.consequence.Setting;

/** All that the consequence rules say about the job as it stands. */
public final class StandingRules {
  private final List<StandingRule> all;

  private StandingRules(List<StandingRule> all) {
    this.all = List.copyOf(all);
  }

  static StandingRules of(EngineJob job) {
    Map<String, LoggedEntry> answers = new HashMap<>();
    for (LoggedEntry logged : job.standing()) {
      if (logged.entry() instanceof CheckAnswered answered) {
        answers.put(answered.check(), logged);
      }
    }
    Setting setting = new Setting(job.layout(), job.places());
    Map<String, StandingRule> found = new LinkedHashMap<>();
    for (MadeChange made : MadeChanges.of(job)) {
      for (Consequence consequence : ConsequenceRules.of(made.change(), setting)) {
        StandingRule rule =
            new StandingRule(
                consequence,
                made.sequence(),
                made.binding(),
                findAnswer(answers, consequence.key(), made.sequence())
                    .or(() -> Settled.find(job, consequence)));
        // A later change asks for the same check anew; one that binds outweighs one that doesn't.
        found.merge(consequence.key() + consequence.effect(), rule, StandingRules::stronger);
      }
      setting = setting.after(made.change());
    }
    return new StandingRules(new ArrayList<>(found.values()));
  }

  private static Optional<CheckAnswered> findAnswer(
      Map<String, LoggedEntry> answers, String key, long after) {
    return Optional.ofNullable(answers.get(key))
        .filter(logged -> logged.sequence() > after)
        .map(logged -> (CheckAnswered) logged.entry());
  }

  private static StandingRule stronger(StandingRule before, StandingRule now) {
    return before.binding() && !now.binding() ? before : now;
  }

  /** Every consequence that stands, in the order of the changes. */
  public List<StandingRule> all() {
    return all;
  }

  /** The checks that nobody has passed yet. */
  public List<StandingRule> openChecks() {
    return all.stream().filter(StandingRule::isOpenCheck).toList();
  }

  /** What concerns a part: at its home place. */
  public List<StandingRule> listFor(Part part) {
    return all.stream().filter(rule -> concerns(rule, part)).toList();
  }

  Optional<Ban> findBan(Part part) {
    return part.fresh()
        ? Optional.empty()
        : all.stream()
            .filter(rule -> rule.bans() && concerns(rule, part))
            .map(StandingRule::consequence)
            .findFirst()
            .map(rule -> new Ban(rule.rule(), rule.sentence(), rule.source()));
  }

  Optional<String> findOpenCheck(Part part) {
    return all.stream()
        .filter(rule -> rule.holds() && concerns(rule, part))
        .findFirst()
        .map(rule -> words(rule.consequence()));
  }

  /** {@code a check is open (R11): check the pushrod length with a checking pushrod}. */
  private static String words(Consequence check) {
    String sentence = check.sentence();
    return "a check is open ("
        + check.rule()
        + "): "
        + sentence.substring(0, 1).toLowerCase(Locale.ROOT)
        + sentence.substring(1, sentence.length() - 1);
  }

  private static boolean concerns(StandingRule rule, Part part) {
    return rule.consequence().places().contains(part.home());
  }
}
