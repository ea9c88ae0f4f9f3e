package wherefrom.ui.puttogether;

import java.util.Optional;
import wherefrom.job.EngineJob;
import wherefrom.job.LoggedEntry;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.ui.app.UndoWords;

/** What UNDO would take back in putting together. */
record UndoneHere(EngineJob state, PutTogether together) {

  /** The step; a half that stands on the screen is none, nor is a stop that was given on it. */
  Optional<LoggedEntry> step() {
    boolean here = together.stop().isPresent() && !together.isOldStop();
    return here ? Optional.empty() : together.findUndone();
  }

  /** The same in few words. */
  String words() {
    return together.isHalf()
        ? "the half that waits: " + String.join(", ", Answers.of(state, together.due()).lines())
        : UndoWords.of(state, together.findUndone());
  }
}
