package wherefrom.rules;

import java.util.Optional;
import wherefrom.engine.Spot;
import wherefrom.parts.Part;

/**
 * A stop that was given before and that nobody has solved, in the words in which it was given: it
 * stands even where nothing can be judged anew, or where a new look would no longer stop.
 *
 * @param name which verdict it was
 * @param sentence the verdict's sentence as it was given
 * @param part the part that was stopped; empty where the tag stood for none
 * @param spot where it was stopped; empty where none was named
 */
public record LeftStanding(
    VerdictName name, String sentence, Optional<Part> part, Optional<Spot> spot)
    implements Verdict {

  @Override
  public <R> R accept(VerdictVisitor<R> visitor) {
    return visitor.leftStanding(this);
  }

  /** Whether it was given for a tag of another engine. */
  boolean isOfWrongEngine() {
    return name == VerdictName.WRONG_ENGINE;
  }

  /** Whether a tag was retired alone: of a retired part the part is known. */
  boolean isOfOldTag() {
    return name == VerdictName.RETIRED && part.isEmpty();
  }

  /** Whether the part could be judged anew at its spot, and nothing stands against it any more. */
  public boolean isSettled() {
    return part.isPresent() && spot.isPresent();
  }

  /** Whether it was stopped at the place that it came from. */
  boolean isAtHome() {
    return part.isPresent() && part.map(one -> one.home().spot()).equals(spot);
  }
}
