package wherefrom.referee;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.engine.Spots;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.BackFromWashing;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartFound;
import wherefrom.job.entry.PartLost;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.entry.StopGiven;
import wherefrom.parts.Place;

/** The referee beside a job that several benches wrote: it is told each step in the log's order. */
public final class SharedReferee {
  private static final Engines V8 = Engines.v8(false);

  private final Bout bout = V8.bout();
  private final Map<Integer, Place> homes = new HashMap<>();
  private final Map<String, Integer> slots = new HashMap<>();

  private SharedReferee(Map<Integer, Place> homes) {
    this.homes.putAll(homes);
    V8.motor().slots.forEach(slot -> slots.put(slot.key(), slot.at()));
  }

  /** What such a job is opened with. */
  public static List<JobEntry> opening() {
    return List.of(Gauges.start(V8.layout()));
  }

  /**
   * The first step about which the referee says something else than the logbook.
   *
   * @param homes the place of each item
   */
  public static Optional<String> findDifference(
      List<LoggedEntry> history, Map<Integer, Place> homes) {
    SharedReferee referee = new SharedReferee(homes);
    for (LoggedEntry logged : history) {
      Optional<String> found = referee.judge(logged.entry());
      if (found.isPresent()) {
        return Optional.of("entry " + logged.sequence() + ": " + found.get());
      }
    }
    return referee.bout.compareLists();
  }

  private Optional<String> judge(JobEntry entry) {
    if (entry instanceof PartFitted fit) {
      return fitted(slot(fit.item()), slots.get(fit.place().key()), true);
    }
    if (entry instanceof StopGiven stop) {
      Place at = new Place(homes.get(stop.item()).kind(), Spots.find(stop.spot()).orElseThrow());
      return fitted(slot(stop.item()), slots.get(at.key()), false);
    }
    return act(entry).flatMap(bout::perform);
  }

  private Optional<String> fitted(int piece, int slot, boolean right) {
    boolean should = bout.story().referee().judge(piece, slot, false) == Referee.Word.RIGHT;
    return should == right
        ? bout.perform(Act.at(Act.Verb.FIT, piece, slot))
        : Optional.of("the referee says " + (should ? "right" : "stop"));
  }

  private Optional<Act> act(JobEntry entry) {
    if (entry instanceof PartOut out) {
      return act(Act.Verb.OUT, out.item());
    }
    if (entry instanceof PartUnfitted out) {
      return act(Act.Verb.TAKE_OUT, out.item());
    }
    if (entry instanceof OffForWashing off) {
      return act(Act.Verb.WASH, off.item());
    }
    if (entry instanceof BackFromWashing back) {
      return act(Act.Verb.WASHED, back.item());
    }
    if (entry instanceof PartLost lost) {
      return act(Act.Verb.LOSE, lost.item());
    }
    return entry instanceof PartFound found ? act(Act.Verb.FIND, found.item()) : Optional.empty();
  }

  private Optional<Act> act(Act.Verb verb, int item) {
    return Optional.of(Act.of(verb, slot(item)));
  }

  private int slot(int item) {
    return slots.get(homes.get(item).key());
  }
}
