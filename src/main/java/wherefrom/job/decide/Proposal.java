package wherefrom.job.decide;

import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Decision;
import wherefrom.parts.Part;

/**
 * What the rules propose for a part. The person decides.
 *
 * @param decision empty where nothing can be proposed yet
 * @param reasons why, the weightiest first; never empty
 */
public record Proposal(Part part, Optional<Decision> decision, List<Reason> reasons) {

  /** A reason, with where it comes from. */
  public record Reason(String sentence, String source) {}

  public Proposal {
    reasons = List.copyOf(reasons);
  }
}
