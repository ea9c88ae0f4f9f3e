package wherefrom.ui.app;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.job.tags.CodeLookup;
import wherefrom.rules.Cue;
import wherefrom.rules.PartNames;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictWords;
import wherefrom.ui.controls.ScreenAnswer;

/** What a code that a screen cannot take is answered with. */
final class Refusal {
  private Refusal() {}

  /**
   * @param wanted what is to be scanned here, in a sentence, where the code is one of ours
   */
  static ScreenAnswer of(CodeLookup found, String wanted) {
    return found.match(
        part -> answer(Cue.ASK, "a part's tag", wanted),
        card -> answer(Cue.ASK, "place card " + whole(card.spot().brief()), wanted),
        card -> answer(Cue.ASK, "action card " + card.action().name(), wanted),
        basket -> answer(Cue.ASK, whole("basket " + basket.number()), wanted),
        bag -> answer(Cue.ASK, whole("bag " + bag.number()), wanted),
        bigPart -> answer(Cue.ASK, bigPart.words(), wanted),
        refused -> answer(refused.verdict()));
  }

  /** A number stays in one line with what it belongs to. */
  private static String whole(String name) {
    return name.replaceAll("(?<=[0-9]) | (?=[0-9])", "\u00a0");
  }

  /** What to do is said in the few words that a stop has below its lines, where it has them. */
  private static ScreenAnswer answer(Verdict verdict) {
    VerdictWords words = verdict.words(PartNames.NUMBERS);
    String told = words.small().isEmpty() ? words.told() : words.sentence() + " " + words.small();
    return answer(verdict.cue(), verdict.word(), told);
  }

  private static ScreenAnswer answer(Cue cue, String headline, String small) {
    return new ScreenAnswer(
        Optional.of(cue), headline, List.of(), small, Optional.empty(), Set.of());
  }
}
