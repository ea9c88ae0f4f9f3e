package wherefrom.job.shelf;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryWords;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.Undo;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.puttogether.FirstStart;
import wherefrom.job.puttogether.ToFit;
import wherefrom.job.running.RunIn;
import wherefrom.job.takeapart.NextOut;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.job.torque.TorqueRecord;
import wherefrom.parts.Whereabouts;

/**
 * Where a job was left, to go on after months.
 *
 * @param sequence of the last entry, those taken back included
 * @param lastTouched when it was last worked on
 * @param lastStep what was done last, in words
 * @param stop the stop that still stands, in words; empty when none does
 * @param inEngine places whose part has not come out yet
 * @param missing open places
 * @param fitted parts that are fitted
 * @param waiting torque cards that are open, then what is away: washing, machine shop, missing
 * @param doNext what to do now, in a sentence
 * @param standing how it stands, place by place and day by day
 */
public record Resume(
    long sequence,
    Instant lastTouched,
    String lastStep,
    Optional<String> stop,
    int inEngine,
    int missing,
    int fitted,
    List<String> waiting,
    String doNext,
    Standing standing) {

  public Resume {
    waiting = List.copyOf(waiting);
  }

  public static Resume of(OpenJob job) {
    EngineJob state = job.state();
    List<LoggedEntry> standing = state.standing();
    LoggedEntry last = standing.get(standing.size() - 1);
    int inEngine = count(state, Whereabouts.IN_ENGINE);
    int missing = new ToFit(job).places().size();
    int fitted = state.fitted().size();
    Optional<String> stop = state.standingStop().map(StopGiven::sentence);
    return new Resume(
        job.sequence(),
        last.time(),
        EntryWords.of(state, Undo.whole(standing, last.sequence()).entry()),
        stop,
        inEngine,
        missing,
        fitted,
        waiting(state),
        doNext(job, stop.isPresent(), inEngine, missing, fitted),
        Standing.of(job));
  }

  private static int count(EngineJob state, Whereabouts where) {
    return (int) state.parts().stream().filter(part -> part.where() == where).count();
  }

  private static List<String> waiting(EngineJob state) {
    List<String> waiting = new ArrayList<>(TorqueRecord.open(state));
    waiting.addAll(away(state));
    return waiting;
  }

  private static List<String> away(EngineJob state) {
    return state.parts().stream()
        .filter(
            part ->
                part.where() == Whereabouts.WASHING
                    || part.where() == Whereabouts.AT_SHOP
                    || part.where() == Whereabouts.LOST)
        .map(
            part ->
                part.part().words()
                    + ": "
                    + part.where().words()
                    + part.awayTo().map(to -> ", " + to).orElse(""))
        .toList();
  }

  private static String doNext(
      OpenJob job, boolean stopped, int inEngine, int missing, int fitted) {
    if (job.state().service().since().isPresent()) {
      return "In service. Note its hours or miles; see what is due.";
    }
    if (RunIn.find(job.state()).filter(RunIn::isRunning).isPresent()) {
      return "The run-in is on. Go to its clock.";
    }
    if (stopped) {
      return "A stop is waiting. Solve it first.";
    }
    if (fitted == 0 && inEngine > 0) {
      return new NextOut(job.state(), OutOrder.CYLINDER, Set.of())
          .find()
          .map(part -> "Take apart. Next out: " + part.part().words() + ".")
          .orElse("Take apart.");
    }
    if (missing > 0) {
      return "Put together. To fit: " + missing + ".";
    }
    int against = new ToFit(job).fittedBut().size();
    if (against > 0) {
      return "Something stands against " + against + " that are in. See what is to fit.";
    }
    return new FirstStart(job).isDue()
        ? "Every section is finished. See what comes before the first start."
        : "Every place is filled. Finish each section.";
  }
}
