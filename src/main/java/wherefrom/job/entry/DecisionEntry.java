package wherefrom.job.entry;

import java.util.List;
import wherefrom.inspection.Decision;

/** The person decided about one part or about a set; the latest decision about a part holds. */
public sealed interface DecisionEntry permits DecisionMade, SetDecided {
  /** The numbers of the parts that were decided about. */
  List<Integer> items();

  Decision decision();

  /** Why, in the person's words; may be empty. */
  String reason();
}
