package wherefrom.job.tags;

import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.KindsTracked;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;
import wherefrom.parts.TagCode;

/**
 * More kinds of part, tracked from now on. Their places get the next item numbers, and what each
 * stands for is logged. It cannot be taken back, as tags may be printed at any time from then on.
 */
public final class Tracking {

  /** What became of a request. */
  public sealed interface Answer {
    /**
     * They are tracked.
     *
     * @param first the item number of the first
     * @param parts how many, at least 1
     */
    record Tracked(int first, int parts, String sentence) implements Answer {}

    /** Nothing was recorded; the sentence says why and what to do. */
    record Refused(String sentence) implements Answer {}
  }

  private final OpenJob job;

  public Tracking(OpenJob job) {
    this.job = job;
  }

  /** The kinds that the engine has and the job does not track, with how many parts each. */
  public Map<PartKind, Integer> offered() {
    Map<PartKind, Integer> offered = new LinkedHashMap<>();
    for (PartKind kind : EnumSet.complementOf(EnumSet.copyOf(job.state().kinds()))) {
      int parts = places(Set.of(kind)).size();
      if (parts > 0) {
        offered.put(kind, parts);
      }
    }
    return offered;
  }

  private List<Place> places(Set<PartKind> kinds) {
    return Places.of(job.state().layout(), kinds);
  }

  /** Tracks these kinds from now on; none of them may be tracked already. */
  public Answer track(Collection<PartKind> kinds) {
    return job.asOne(() -> trackOnce(kinds));
  }

  private Answer trackOnce(Collection<PartKind> kinds) {
    Set<PartKind> offered = offered().keySet();
    if (kinds.isEmpty()) {
      return new Answer.Refused("Name the kinds of part to track.");
    }
    for (PartKind kind : kinds) {
      if (!offered.contains(kind)) {
        return new Answer.Refused(
            job.state().kinds().contains(kind)
                ? "The " + kind.plural() + " are tracked already: leave them out."
                : "This engine has no " + kind.plural() + " to track.");
      }
    }
    int first = job.nextItem();
    List<Place> items = places(Set.copyOf(kinds));
    if (first + items.size() - 1 > TagCode.MOST_ITEM) {
      return new Answer.Refused("All part numbers of this job are used up.");
    }
    job.record(new KindsTracked(Set.copyOf(kinds), first, items));
    return new Answer.Tracked(first, items.size(), sentence(kinds, first, items.size()));
  }

  private static String sentence(Collection<PartKind> kinds, int first, int count) {
    String what = kinds.stream().sorted().map(PartKind::plural).collect(Collectors.joining(", "));
    return count
        + " parts more ("
        + what
        + "), numbers "
        + first
        + " to "
        + (first + count - 1)
        + ". Print their tags.";
  }
}
