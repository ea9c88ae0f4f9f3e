package wherefrom.rules;

import java.util.Optional;
import wherefrom.engine.Spot;
import wherefrom.parts.Orientation;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/** Verdicts on a part that does not go here, or not this way round. */
public sealed interface Misplaced extends Verdict {

  /**
   * The part belongs at another place.
   *
   * @param belongs where, and with which part it goes where that is not its home
   * @param rightPart the part that belongs here
   */
  record WrongPlace(Part part, Place place, Belonging belongs, Optional<Part> rightPart)
      implements Misplaced, StandsAgainst {
    @Override
    public VerdictName name() {
      return VerdictName.WRONG_PLACE;
    }

    @Override
    public <R> R accept(VerdictVisitor<R> visitor) {
      return visitor.wrongPlace(this);
    }

    @Override
    public boolean canBeSettled() {
      return true;
    }
  }

  /**
   * The part was machined or worn in with another individual than the one that is here.
   *
   * @param own the part it belongs with
   * @param seated what sits here in its stead; empty where the part's own mate was replaced
   * @param rightPart the mate of what sits here, where one is known
   */
  record WrongMate(
      Part part, Place place, Part own, Optional<Part> seated, Optional<Part> rightPart)
      implements Misplaced, StandsAgainst {
    @Override
    public VerdictName name() {
      return VerdictName.WRONG_MATE;
    }

    @Override
    public <R> R accept(VerdictVisitor<R> visitor) {
      return visitor.wrongMate(this);
    }

    @Override
    public boolean canBeSettled() {
      return true;
    }
  }

  /**
   * No part of this kind lives at this spot, or the list wants one of another kind.
   *
   * @param wanted the kind that the list wants here; empty where no list is followed
   * @param rightPart the part that the list wants
   */
  record WrongKind(Part part, Spot spot, Optional<PartKind> wanted, Optional<Part> rightPart)
      implements Misplaced {
    @Override
    public VerdictName name() {
      return VerdictName.WRONG_KIND;
    }

    @Override
    public <R> R accept(VerdictVisitor<R> visitor) {
      return visitor.wrongKind(this);
    }
  }

  /**
   * An upper shell at a lower place, or the other way round.
   *
   * @param rightPart the part that belongs here
   */
  record WrongHalf(Part part, Place place, Optional<Part> rightPart) implements Misplaced {
    @Override
    public VerdictName name() {
      return VerdictName.WRONG_HALF;
    }

    @Override
    public <R> R accept(VerdictVisitor<R> visitor) {
      return visitor.wrongHalf(this);
    }
  }

  /** The right part, but end for end or the other way round. */
  record WrongEnd(Part part, Place place, Orientation orientation)
      implements Misplaced, StandsAgainst {
    @Override
    public VerdictName name() {
      return VerdictName.WRONG_END;
    }

    @Override
    public <R> R accept(VerdictVisitor<R> visitor) {
      return visitor.wrongEnd(this);
    }

    @Override
    public boolean canBeSettled() {
      return true;
    }
  }
}
