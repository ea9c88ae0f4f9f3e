package wherefrom.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wherefrom.job.entry.BigPartsNamed;
import wherefrom.job.entry.EngineReopened;
import wherefrom.job.entry.LimitTyped;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.PartNumberTyped;
import wherefrom.job.entry.PhotoAdded;
import wherefrom.job.entry.PriceNoted;
import wherefrom.job.entry.SetHolds;
import wherefrom.job.entry.SizeTyped;
import wherefrom.job.entry.SubjectPhotographed;
import wherefrom.job.entry.TagsPrinted;
import wherefrom.job.entry.ToolListed;
import wherefrom.parts.Place;

/**
 * An engine that comes apart again. Its next life is a job of its own within the same logbook: it
 * begins as a new job does, with every part where it sat, and what was found, decided, changed and
 * answered before says nothing of it any more.
 */
public final class NextLife {
  /** What holds on: tags that exist, tools and sheets, and what was photographed or written. */
  private static final EntryKinds CARRIED =
      new EntryKinds(
          Set.of(
              TagsPrinted.class,
              ToolListed.class,
              LimitTyped.class,
              SizeTyped.class,
              PriceNoted.class,
              PartNumberTyped.class,
              SetHolds.class,
              BigPartsNamed.class,
              NoteAdded.class,
              PhotoAdded.class,
              SubjectPhotographed.class));

  private NextLife() {}

  /** What is to be written where the engine comes apart again. */
  public static EngineReopened entry(EngineJob job, String why) {
    Map<Integer, Place> seated = seated(job);
    return new EngineReopened(
        why,
        MadeChanges.setting(job).lifters(),
        List.copyOf(seated.keySet()),
        List.copyOf(seated.values()));
  }

  private static Map<Integer, Place> seated(EngineJob job) {
    Map<Integer, Place> seated = new LinkedHashMap<>();
    for (PartRecord part : job.parts()) {
      int item = part.part().item();
      job.findSeat(item).ifPresent(place -> seated.put(item, place));
    }
    return seated;
  }

  /** Whether each place has its part and each part its place. */
  public static boolean isPossible(EngineJob job) {
    try {
      new PartsLedger().goOn(job.ledger(), job.layout(), seated(job));
      return true;
    } catch (IllegalStateException e) {
      return false;
    }
  }

  static Map<Integer, Place> seats(EngineReopened reopened) {
    Map<Integer, Place> seats = new LinkedHashMap<>();
    for (int at = 0; at < reopened.items().size(); at++) {
      seats.put(reopened.items().get(at), reopened.places().get(at));
    }
    return seats;
  }

  /** The entries of the life before that hold on. */
  static List<LoggedEntry> carried(EngineJob before) {
    List<LoggedEntry> carried = new ArrayList<>();
    before.standing().stream().filter(it -> CARRIED.have(it.entry())).forEach(carried::add);
    return carried;
  }
}
