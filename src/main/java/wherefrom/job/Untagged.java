package wherefrom.job;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wherefrom.job.entry.PartFitted;
import wherefrom.parts.Place;

/**
 * What sits in its place without a tag having been read: a person said which part it is, and
 * nothing proves it.
 */
public final class Untagged {
  /** What is said of it, wherever it is shown. */
  public static final String SENTENCE = "No tag: nothing proves which part it is.";

  private Untagged() {}

  /** Whether a part is recorded as fitted, and had no tag then. */
  public static boolean is(EngineJob job, int item) {
    return job.findFittedAt(item).isPresent() && fits(job).getOrDefault(item, false);
  }

  /** The places where such a part sits. */
  public static List<Place> places(EngineJob job) {
    Map<Integer, Boolean> fits = fits(job);
    return job.places().stream()
        .filter(
            place ->
                job.findFitted(place)
                    .filter(part -> fits.getOrDefault(part.item(), false))
                    .isPresent())
        .toList();
  }

  /** Of each part that was ever fitted, whether it had no tag the last time. */
  private static Map<Integer, Boolean> fits(EngineJob job) {
    Map<Integer, Boolean> last = new HashMap<>();
    for (LoggedEntry logged : job.standing()) {
      if (logged.entry() instanceof PartFitted fit) {
        last.put(fit.item(), fit.untagged());
      }
    }
    return last;
  }
}
