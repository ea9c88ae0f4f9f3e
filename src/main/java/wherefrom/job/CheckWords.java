package wherefrom.job;

import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;
import wherefrom.inspection.Look;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.parts.Place;
import wherefrom.rules.consequence.CheckKey;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.Effect;
import wherefrom.rules.consequence.KnownCheck;
import wherefrom.rules.debris.Opening;
import wherefrom.text.Words;

/** The answered checks in words: what was asked, by which rule, and why. */
public final class CheckWords {

  private final EngineJob job;

  public CheckWords(EngineJob job) {
    this.job = job;
  }

  /** {@code Look at every journal (rule 22, debris in the oil): pass}. */
  String of(CheckAnswered answered) {
    return asked(answered.check()) + ": " + answered.look().word();
  }

  private String asked(String check) {
    Optional<String> opened =
        Stream.of(Opening.values())
            .filter(opening -> opening.check().equals(check))
            .map(opening -> "opened for debris, " + opening.title())
            .findFirst();
    return opened
        .or(() -> findRule(check).map(CheckWords::words))
        .orElseGet(() -> withoutRule(check));
  }

  private Optional<Consequence> findRule(String check) {
    return job.rules().all().stream()
        .map(StandingRule::consequence)
        .filter(rule -> rule.key().equals(check))
        .sorted((one, other) -> Boolean.compare(asks(other), asks(one)))
        .findFirst();
  }

  private static boolean asks(Consequence rule) {
    return rule.effect().isCheck() || rule.effect() == Effect.FORBIDDEN;
  }

  private static String words(Consequence rule) {
    String asked = Words.withoutStop(rule.sentence());
    return asked + " (" + rule.ruleWords() + ", " + String.join(", then ", rule.reasons()) + ")";
  }

  /** The change that asked is taken back: the rule and the name are all that is left. */
  private static String withoutRule(String check) {
    Optional<CheckKey> key = CheckKey.find(check);
    String place = key.map(CheckKey::where).orElse("");
    String named =
        key.map(asked -> Consequence.ruleWords(asked.rule()) + ", " + asked.name()).orElse(check);
    String where =
        Place.find(place)
            .map(at -> at.spot().words())
            .or(() -> Spots.find(place).map(Spot::words))
            .orElse(place);
    return "a check that nothing asks for any more: "
        + named.replace('-', ' ')
        + (where.isEmpty() ? "" : ", " + where);
  }

  /**
   * What an open check still wants. A filter that was cut open already, while debris was followed
   * up, need not be cut again; that a new one is on, nobody said yet.
   */
  public String stillOpen(Consequence rule, Days days) {
    boolean filter = rule.checkKey().is(KnownCheck.FILTER_CUT);
    return rule.ruleWords()
        + ": "
        + (filter ? filterCut(days) : Optional.<String>empty()).orElse(rule.sentence());
  }

  private Optional<String> filterCut(Days days) {
    Optional<String> cut = Optional.empty();
    for (LoggedEntry logged : job.standing()) {
      if (logged.entry() instanceof CheckAnswered answered
          && answered.check().equals(Opening.FILTER.check())) {
        cut =
            answered.look() == Look.NOT_LOOKED
                ? Optional.empty()
                : Optional.of(filter(answered, days.day(logged.time())));
      }
    }
    return cut;
  }

  private static String filter(CheckAnswered answered, String day) {
    return "Fit a new filter. The old one was cut open on "
        + day
        + ": "
        + answered.look().word()
        + ".";
  }
}
