package wherefrom.ui.torque;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.rules.Cue;
import wherefrom.text.Words;
import wherefrom.ui.controls.ScreenAnswer;
import wherefrom.workings.torque.Bolt;
import wherefrom.workings.torque.NextStep;
import wherefrom.workings.torque.Tick;
import wherefrom.workings.torque.TorqueAnswer;
import wherefrom.workings.torque.TorqueCard;

/**
 * What stands in large words on a torque card at work.
 *
 * @param said what is to be said beside it; empty for nothing
 * @param brief whether there is room for what must be known now alone
 */
record TorqueAnswers(TorqueCard card, String said, boolean brief) {

  /** A bolt that is not the next one was touched. */
  static ScreenAnswer outOfTurn(TorqueAnswer.OutOfTurn question, boolean brief) {
    Bolt asked = question.bolt();
    return answer(
        Optional.of(Cue.ASK),
        "Out of turn?",
        "Bolt " + question.due().number() + " is next, not\u00a0" + asked.number(),
        brief ? "" : "Scan YES, or press the key: bolt " + asked.number() + " was done anyway.");
  }

  /** The bolt in turn, the check, or that all is done. */
  ScreenAnswer answer() {
    return card.next()
        .match(
            this::tighten,
            this::check,
            done ->
                answer(
                    Optional.of(Cue.RIGHT),
                    "Tightened",
                    "All checked",
                    said.isEmpty() && !brief ? whole() : said));
  }

  /** {@code 10 bolts in 3 stages, checked by C. D.}. */
  private String whole() {
    List<String> checkers =
        card.ticks().stream()
            .filter(tick -> tick.stage() == card.checkStage())
            .map(Tick::person)
            .distinct()
            .toList();
    return Words.count(card.bolts(), "bolt")
        + " in "
        + Words.count(card.spec().stages().size(), "stage")
        + ", checked by "
        + Words.withStop(String.join(", ", checkers).replace(". ", ".\u00a0"));
  }

  private ScreenAnswer tighten(NextStep.Tighten tighten) {
    // What comes before the first bolt is over at the second.
    String how = card.boltsDone(tighten.stageNumber()) == 0 ? tighten.before() : "";
    boolean plain = how.isEmpty() && !brief;
    return answer(
        Optional.empty(),
        heading(tighten),
        Words.capital(tighten.stage().words(tighten.bolt())),
        small(tighten.stageNumber(), plain ? "Your engine's service information decides." : how));
  }

  private ScreenAnswer check(NextStep.SecondCheck check) {
    return answer(
        Optional.empty(),
        "A second person checks",
        "Check bolt " + check.bolt().number(),
        small(card.checkStage(), brief ? check.brief() : check.how()));
  }

  private String heading(NextStep.Tighten tighten) {
    return "Stage "
        + tighten.stageNumber()
        + " of "
        + card.spec().stages().size()
        + ", threads "
        + card.spec().threads();
  }

  private String small(int stage, String how) {
    String count = card.boltsDone(stage) + " of " + card.bolts() + " done.";
    return said.isEmpty() ? (count + " " + how).strip() : said;
  }

  private static ScreenAnswer answer(
      Optional<Cue> cue, String headline, String line, String small) {
    return new ScreenAnswer(cue, headline, List.of(line), small, Optional.empty(), Set.of());
  }
}
