package wherefrom.ui.app;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.job.tags.Found;
import wherefrom.rules.Cue;
import wherefrom.rules.PartNames;
import wherefrom.rules.Verdict;
import wherefrom.ui.controls.Answer;

/** What a code that a screen cannot take is answered with. */
final class Refusal {
  private Refusal() {}

  /**
   * @param wanted what is to be scanned here, in a sentence, where the code is one of ours
   */
  static Answer of(Found found, String wanted) {
    if (found instanceof Found.Refused refused) {
      Verdict verdict = refused.verdict();
      String words = verdict.words(PartNames.NUMBERS).told();
      return answer(verdict.cue(), verdict.word(), words);
    }
    return answer(Cue.ASK, name(found), wanted);
  }

  private static String name(Found found) {
    if (found instanceof Found.ASpot card) {
      return "place card " + card.spot().figures();
    }
    if (found instanceof Found.AnAction card) {
      return "action card " + card.action().name();
    }
    return found instanceof Found.ABasket basket ? "basket " + basket.number() : "a part's tag";
  }

  private static Answer answer(Cue cue, String headline, String small) {
    return new Answer(Optional.of(cue), headline, List.of(), small, Optional.empty(), Set.of());
  }
}
