package wherefrom.rules;

import java.util.List;
import wherefrom.parts.Part;
import wherefrom.parts.Place;

/** One kind of objection. Pure: the same bench, part and place give the same answer. */
@FunctionalInterface
interface ObjectionRule {
  /** What stands against the part in the place; empty where this rule knows nothing. */
  List<Objection> find(JobFacts bench, Part part, Place place);
}
