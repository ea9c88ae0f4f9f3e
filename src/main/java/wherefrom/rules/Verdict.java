package wherefrom.rules;

import java.util.Optional;
import wherefrom.parts.Part;
import wherefrom.parts.Place;

/**
 * The answer to: this part, into this place. What it says stands in {@link VerdictWording}; who
 * treats kinds of verdict unlike each other is a {@link VerdictVisitor}.
 */
public sealed interface Verdict
    permits Verdict.RightPlace,
        Misplaced,
        Verdict.PlaceTaken,
        Verdict.AlreadyFitted,
        Verdict.FittedBut,
        Verdict.Retired,
        StandsAgainst,
        LeftStanding,
        CodeVerdict {

  /** Which verdict it is. */
  VerdictName name();

  /** Hands itself to the visitor's method for its kind. */
  <R> R accept(VerdictVisitor<R> visitor);

  /** What it is called, in a word or two. */
  default String word() {
    return name().word();
  }

  /** All that it says. */
  default VerdictWords words(PartNames names) {
    return accept(new VerdictWording(names));
  }

  /** What is so, for a person, in one or two sentences. */
  default String sentence() {
    return words(PartNames.NUMBERS).sentence();
  }

  /** What to do now; empty where nothing is. */
  default String wayOut() {
    return words(PartNames.NUMBERS).advice();
  }

  /** The key of the check that it waits for; empty where it waits for none. */
  default String openCheck() {
    return "";
  }

  /** The part that can be taken out where it sits, for another try; empty where none is. */
  default Optional<Part> findInTheWay() {
    return Optional.empty();
  }

  /** Whether it says that something was done: a question which tag is meant says nothing yet. */
  default boolean isLogged() {
    return true;
  }

  /** How it is shown and sounded; a stop, where nothing else is said. */
  default Cue cue() {
    return Cue.STOP;
  }

  /** Whether the part may not go in as it is. */
  default boolean stops() {
    return cue() != Cue.RIGHT;
  }

  /**
   * The part came out of this place and nothing stands against it.
   *
   * @param hint what to watch while it goes in; empty when there is nothing
   */
  record RightPlace(Part part, Place place, String hint) implements Verdict {
    @Override
    public VerdictName name() {
      return VerdictName.RIGHT_PLACE;
    }

    @Override
    public <R> R accept(VerdictVisitor<R> visitor) {
      return visitor.rightPlace(this);
    }

    @Override
    public Cue cue() {
      return Cue.RIGHT;
    }
  }

  /** Another part is fitted here. */
  record PlaceTaken(Part part, Place place, Part fitted) implements Verdict {
    @Override
    public VerdictName name() {
      return VerdictName.PLACE_TAKEN;
    }

    @Override
    public <R> R accept(VerdictVisitor<R> visitor) {
      return visitor.placeTaken(this);
    }

    @Override
    public Optional<Part> findInTheWay() {
      return Optional.of(fitted);
    }
  }

  /** The part is fitted: here, which is no alarm, or elsewhere, which is a stop. */
  record AlreadyFitted(Part part, Place place, Place fittedAt) implements Verdict {
    @Override
    public VerdictName name() {
      return VerdictName.ALREADY_FITTED;
    }

    @Override
    public <R> R accept(VerdictVisitor<R> visitor) {
      return visitor.alreadyFitted(this);
    }

    @Override
    public Optional<Part> findInTheWay() {
      return Optional.of(part);
    }

    boolean isHere() {
      return place.equals(fittedAt);
    }

    @Override
    public Cue cue() {
      return isHere() ? Cue.RIGHT : Cue.STOP;
    }
  }

  /**
   * The part is fitted here, and something stands against it now.
   *
   * @param against the most serious of it
   * @param canStay whether a reason can settle all of it
   */
  record FittedBut(Part part, Place place, StandsAgainst against, boolean canStay)
      implements Verdict {
    @Override
    public VerdictName name() {
      return VerdictName.FITTED_BUT;
    }

    @Override
    public <R> R accept(VerdictVisitor<R> visitor) {
      return visitor.fittedBut(this);
    }

    @Override
    public Optional<Part> findInTheWay() {
      return Optional.of(part);
    }

    @Override
    public String openCheck() {
      return against.openCheck();
    }
  }

  /**
   * The part may not be fitted yet.
   *
   * @param hold what keeps it
   * @param why the same in a clause that begins small, with what is known beside
   * @param check the key of the check that is open; empty where none is
   */
  record NotCleared(Part part, Place place, Hold hold, String why, String check)
      implements StandsAgainst {
    @Override
    public VerdictName name() {
      return VerdictName.NOT_CLEARED;
    }

    @Override
    public <R> R accept(VerdictVisitor<R> visitor) {
      return visitor.notCleared(this);
    }

    @Override
    public boolean canBeSettled() {
      return true;
    }

    @Override
    public String openCheck() {
      return check;
    }
  }

  /** A rule forbids the part. */
  record MustBeNew(Part part, Place place, Ban ban) implements StandsAgainst {
    @Override
    public VerdictName name() {
      return VerdictName.MUST_BE_NEW;
    }

    @Override
    public <R> R accept(VerdictVisitor<R> visitor) {
      return visitor.mustBeNew(this);
    }

    @Override
    public boolean canBeSettled() {
      return false;
    }
  }

  /**
   * The part was replaced, or the tag is an older issue of a reprinted one.
   *
   * @param inUse the part that came in its place; of an older tag the part itself, whose newer tag
   *     counts; empty where none came
   */
  record Retired(Part part, Optional<Part> inUse) implements Verdict {
    @Override
    public VerdictName name() {
      return VerdictName.RETIRED;
    }

    @Override
    public <R> R accept(VerdictVisitor<R> visitor) {
      return visitor.retired(this);
    }

    /** Whether only the tag is old: the part goes on with its newer one. */
    public boolean isTagOnly() {
      return inUse.equals(Optional.of(part));
    }
  }
}
