package wherefrom.job.inspect;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import wherefrom.inspection.Look;
import wherefrom.job.EntryFold;
import wherefrom.job.OpenJob;
import wherefrom.job.StandingRule;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.job.entry.DebrisFound;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.debris.DebrisFind;
import wherefrom.rules.debris.DebrisLook;
import wherefrom.rules.debris.DebrisMap;
import wherefrom.rules.debris.DebrisPlace;
import wherefrom.rules.debris.Opening;

/** What was found in the oil, and what to open next. */
public final class DebrisBook {
  private static final EntryFold<Seen> READS =
      EntryFold.<Seen>none()
          .on(DebrisFound.class, Seen::find)
          .on(CheckAnswered.class, Seen::answer);

  /** Every find, oldest first, with what was said of it, and what was opened. */
  private record Seen(Map<DebrisFind, List<String>> finds, Set<Opening> opened) {
    void find(DebrisFound found) {
      List<String> notes =
          finds.computeIfAbsent(
              new DebrisFind(found.place(), found.look()), none -> new ArrayList<>());
      if (!found.note().isEmpty()) {
        notes.add(found.note());
      }
    }

    void answer(CheckAnswered answered) {
      if (answered.look() != Look.NOT_LOOKED) {
        Stream.of(Opening.values())
            .filter(opening -> opening.check().equals(answered.check()))
            .forEach(opened::add);
      }
    }
  }

  private final OpenJob job;

  public DebrisBook(OpenJob job) {
    this.job = job;
  }

  public void found(DebrisPlace place, DebrisLook look, String note) {
    job.inOne(() -> foundOnce(place, look, note));
  }

  private void foundOnce(DebrisPlace place, DebrisLook look, String note) {
    job.record(new DebrisFound(place, look, note.strip()));
  }

  /** Something was opened and looked at; what was seen there is noted as a find of its own. */
  public void opened(Opening opening, Look look, String words) {
    job.inOne(() -> openedOnce(opening, look, words));
  }

  private void openedOnce(Opening opening, Look look, String words) {
    job.record(new CheckAnswered(opening.check(), look, words.strip()));
  }

  /** Every find, oldest first. */
  public List<DebrisFind> finds() {
    return List.copyOf(seen().finds().keySet());
  }

  /** What was said of a find, oldest first. */
  public List<String> notes(DebrisFind find) {
    return List.copyOf(seen().finds().getOrDefault(find, List.of()));
  }

  /** Suspects, what to open next, and whether it reached the mains. */
  public DebrisMap map() {
    return DebrisMap.of(finds(), implied(), opened(), BearingFaces.of(job.state()));
  }

  /** Findings elsewhere that set debris loose, as a failed lobe or a broken gear. */
  private List<String> implied() {
    return job.state().rules().all().stream()
        .map(StandingRule::consequence)
        .filter(rule -> rule.cause().kind() == ChangeKind.DEBRIS_LOOSE)
        .map(Consequence::firstCause)
        .filter(cause -> cause.kind() != ChangeKind.DEBRIS_LOOSE)
        .map(Change::words)
        .distinct()
        .toList();
  }

  private Set<Opening> opened() {
    return seen().opened();
  }

  private Seen seen() {
    return READS.all(
        new Seen(new LinkedHashMap<>(), EnumSet.noneOf(Opening.class)), job.state().standing());
  }
}
