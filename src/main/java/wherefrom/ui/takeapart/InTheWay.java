package wherefrom.ui.takeapart;

import java.util.Optional;
import wherefrom.rules.Cue;
import wherefrom.ui.controls.ScreenAnswer;

/** A question or a verdict that stands over the work, and what the camera may ask before it. */
final class InTheWay {
  private Optional<ScreenAnswer> answer = Optional.empty();
  private Optional<OutOfTurn> doubt = Optional.empty();
  private Optional<ScreenAnswer> hint = Optional.empty();

  /** What is shown; empty in the run of the work. */
  Optional<ScreenAnswer> answer() {
    return hint.or(() -> answer);
  }

  /** The part that is asked about; nothing while the camera asks for something. */
  Optional<OutOfTurn> doubt() {
    return hint.isPresent() ? Optional.empty() : doubt;
  }

  /**
   * Something stands in the way.
   *
   * @param part that it asks about; empty for a verdict
   */
  void ask(ScreenAnswer asked, Optional<OutOfTurn> part) {
    answer = Optional.of(asked);
    doubt = part;
  }

  /**
   * The camera asks for something before all else, or no more.
   *
   * @return what to sound
   */
  Optional<Cue> cover(Optional<ScreenAnswer> wanted) {
    hint = wanted;
    return hint.flatMap(ScreenAnswer::cue);
  }

  /** What is shown was read; what a hint covered stands again. */
  void dismiss() {
    if (hint.isPresent()) {
      hint = Optional.empty();
    } else {
      clear();
    }
  }

  /** Nothing stands in the way any more. */
  void clear() {
    hint = Optional.empty();
    answer = Optional.empty();
    doubt = Optional.empty();
  }
}
