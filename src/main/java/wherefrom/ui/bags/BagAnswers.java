package wherefrom.ui.bags;

import java.util.function.Function;
import wherefrom.job.bags.BagOutcome;
import wherefrom.rules.Cue;
import wherefrom.text.UsualWords;
import wherefrom.ui.app.ScreenContext;

/** What came of a deed with a bag or a big part, as it is told; what is asked leads to a page. */
final class BagAnswers {
  /** Why something is done all the same. */
  private static final UsualWords REASONS = UsualWords.orOther("this engine differs");

  private final ScreenContext context;

  BagAnswers(ScreenContext context) {
    this.context = context;
  }

  /**
   * Does something, and asks why where something speaks against it.
   *
   * @param deed is given the reason, which is empty at first
   */
  void take(Function<String, BagOutcome> deed) {
    context.attempt(() -> told(deed.apply(""), deed));
    context.navigator().changed();
  }

  private void told(BagOutcome came, Function<String, BagOutcome> deed) {
    context.sounds().play(came instanceof BagOutcome.Logged ? Cue.RIGHT : Cue.ASK);
    if (came instanceof BagOutcome.Asked asked) {
      ask(asked.sentence(), deed);
    } else {
      context.say(came.sentence());
    }
  }

  private void ask(String sentence, Function<String, BagOutcome> deed) {
    context.navigator().open(() -> new BagAskScreen(context, sentence, REASONS, deed, this));
  }

  /** Done for a reason: what came of it is told. */
  void forReason(String reason, Function<String, BagOutcome> deed) {
    context.attempt(() -> context.say(deed.apply(reason).sentence()));
    context.navigator().changed();
  }
}
