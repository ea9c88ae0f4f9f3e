package wherefrom.ui.inspect;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.OpenJob;
import wherefrom.job.StandingRule;
import wherefrom.job.before.BeforeTeardown;
import wherefrom.job.inspect.CheckCard;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.photos.Photograph;
import wherefrom.rules.before.Symptom;
import wherefrom.ui.subject.Named;

/** The cards of one subject, one of them up. */
final class LookCardModel {
  private final OpenJob job;
  private final Inspecting inspecting;
  private final List<Subject> round;
  private Subject subject;
  private int at;
  private String said = "";
  private List<StandingRule> followed = List.of();

  /**
   * @param round what is looked at one after the other; empty where one alone is
   */
  LookCardModel(OpenJob job, Subject subject, List<Subject> round) {
    this.job = job;
    this.inspecting = new Inspecting(job);
    this.round = List.copyOf(round);
    this.subject = subject;
    turnTo(subject);
  }

  /** Puts another subject's first open card up. */
  void turnTo(Subject other) {
    subject = other;
    at = 0;
    List<CheckCard> cards = cards();
    for (int card = cards.size() - 1; card >= 0; card--) {
      if (cards.get(card).look() == Look.NOT_LOOKED) {
        at = card;
      }
    }
  }

  Subject subject() {
    return subject;
  }

  String title() {
    return Named.title(job.state(), subject);
  }

  List<CheckCard> cards() {
    return inspecting.cards(subject);
  }

  CheckCard card() {
    return cards().get(at);
  }

  /** {@code Test 1 of 3}. */
  String count() {
    return "Test " + (at + 1) + " of " + cards().size();
  }

  boolean isLast() {
    return at + 1 >= cards().size();
  }

  /** The next card; behind the last one the next subject of the round that has an open one. */
  boolean next() {
    if (!isLast()) {
      at++;
      return true;
    }
    Optional<Subject> following = following();
    following.ifPresent(this::turnTo);
    return following.isPresent();
  }

  Optional<Subject> following() {
    int here = round.indexOf(subject);
    for (int step = 1; here >= 0 && step < round.size(); step++) {
      Subject other = round.get((here + step) % round.size());
      boolean open =
          inspecting.cards(other).stream().anyMatch(card -> card.look() == Look.NOT_LOOKED);
      if (open) {
        return Optional.of(other);
      }
    }
    return Optional.empty();
  }

  boolean isFirst() {
    return at == 0;
  }

  void before() {
    at = Math.max(0, at - 1);
  }

  /**
   * What to ask before a doubt or a failure gives way to a better answer, or an answer is taken
   * away; empty where nothing that was found is lost.
   */
  Optional<String> question(Look better) {
    Look stands = card().look();
    if (better == Look.NOT_LOOKED && stands == Look.PASS) {
      return Optional.of("Test " + (at + 1) + " is PASS. Undo that answer?");
    }
    if (weight(better) >= weight(stands)) {
      return Optional.empty();
    }
    return Optional.of(
        "Test "
            + (at + 1)
            + " is "
            + capitals(stands)
            + ". Change it to "
            + capitals(better)
            + "?");
  }

  private static int weight(Look look) {
    return look == Look.FAIL ? 2 : look == Look.SUSPECT ? 1 : 0;
  }

  private static String capitals(Look look) {
    return look.word().toUpperCase(Locale.ROOT);
  }

  /** What became of the last answer; empty where there was none. */
  String said() {
    return said;
  }

  /**
   * After an answer the next card comes up, but a doubt that readings can settle stays up for them.
   *
   * @return whether there is another card
   */
  boolean goOn() {
    CheckCard card = card();
    boolean settle = card.look() == Look.SUSPECT && plan().isPresent();
    if (card.look() == Look.NOT_LOOKED || settle) {
      said = settle ? "Kept: suspect. Measure it to settle it, or go on." : "";
      return true;
    }
    said = "Kept: " + card.look().word() + ". " + card.check().title();
    Subject before = subject;
    boolean more = next();
    if (!subject.equals(before)) {
      said = "Kept: " + card.look().word() + ". Now look at another: " + title() + ".";
    }
    return more;
  }

  /** What followed from the answer that was kept last, the hardest first. */
  List<StandingRule> followed() {
    return followed;
  }

  /** Keeps an answer; gives why it was not kept, or nothing where it was. */
  String answer(Look look) {
    // A pass once more says nothing new; a doubt once more may be later than a decision.
    boolean known = look == card().look() && weight(look) == 0;
    return known ? "" : keep(look, card().note());
  }

  String note(String words) {
    return keep(card().look(), words);
  }

  private String keep(Look look, String note) {
    followed = List.of();
    Inspecting.Answer answer = inspecting.answer(subject, card().check().key(), look, note);
    if (answer instanceof Inspecting.Answer.Refused refused) {
      return refused.sentence();
    }
    followed =
        ((Inspecting.Answer.Kept) answer)
            .follows().stream()
                .sorted(Comparator.comparing(rule -> rule.consequence().effect()))
                .toList();
    return "";
  }

  /** The photographs that were taken for the card that is up, oldest first. */
  List<Photograph> photos() {
    String check = card().check().key();
    return Photograph.listOf(job.state(), subject).stream()
        .filter(photo -> photo.check().equals(check))
        .toList();
  }

  /** What the first of them points to; what was read stands behind <i>Hints</i>. */
  Optional<String> hint() {
    return new BeforeTeardown(job).hints(subject).stream().map(Symptom::pointsTo).findFirst();
  }

  /** What the tests before teardown said of this place, in sentences. */
  List<String> hints() {
    return new BeforeTeardown(job).hints(subject).stream().map(Symptom::sentence).toList();
  }

  /** The readings that settle the card's doubt. */
  Optional<ReadingPlan> plan() {
    return card().check().plan().flatMap(ReadingPlans::find);
  }
}
