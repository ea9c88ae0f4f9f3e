package wherefrom.ui.puttogether;

import java.util.Optional;
import wherefrom.engine.Spot;
import wherefrom.job.EngineJob;
import wherefrom.job.puttogether.FitMode;
import wherefrom.job.puttogether.FitOutcome;
import wherefrom.parts.Part;

/**
 * The part that somebody named by a tap and wants to put in. That says what is meant, not what is
 * in the hand: its tag is asked for, and nothing else is known until a part is.
 */
final class WantedPart {
  private Optional<Part> part = Optional.empty();

  void ask(Part named) {
    part = Optional.of(named);
  }

  void drop() {
    part = Optional.empty();
  }

  /** A place may be named before the tag is read, and what leaves all as it is changes nothing. */
  void after(FitOutcome step, FitMode mode) {
    boolean stays = step instanceof FitOutcome.WaitingForPart || Answers.leavesDue(step, mode);
    part = part.filter(named -> stays);
  }

  Optional<Part> find() {
    return part;
  }

  /** What it asks for; empty where nobody is wanted. */
  Optional<Halves> halves(EngineJob job, FitOutcome due) {
    Optional<Spot> known =
        due instanceof FitOutcome.WaitingForPart waiting
            ? Optional.of(waiting.spot())
            : Optional.empty();
    return part.map(named -> Halves.wanted(job, named, known));
  }
}
