package wherefrom.ui.puttogether;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import wherefrom.engine.Spot;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.CodeVerdict;
import wherefrom.rules.LeftStanding;
import wherefrom.rules.Misplaced;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictVisitor;

/**
 * The places that a verdict speaks of, for the drawing.
 *
 * @param kind the kind of part; empty where the tag stood for none
 * @param wrong where the part must not go, or may not yet
 * @param right where it goes; empty where no place is right for it
 */
record Marked(Optional<PartKind> kind, Optional<Spot> wrong, Optional<Spot> right) {
  private static final Marked NOTHING =
      new Marked(Optional.empty(), Optional.empty(), Optional.empty());

  static Marked of(Verdict verdict) {
    return verdict.accept(new Finding());
  }

  /** Both places. */
  Set<Spot> spots() {
    Set<Spot> spots = new LinkedHashSet<>();
    right.ifPresent(spots::add);
    wrong.ifPresent(spots::add);
    return spots;
  }

  /** The right place; empty where there is none. */
  Optional<Place> place() {
    return kind.flatMap(
        one -> right.filter(at -> Place.canLive(one, at)).map(at -> new Place(one, at)));
  }

  private static Marked both(Part part, Spot wrong, Spot right) {
    return new Marked(Optional.of(part.kind()), Optional.of(wrong), Optional.of(right));
  }

  private static Marked wrong(Part part, Spot spot) {
    return new Marked(Optional.of(part.kind()), Optional.of(spot), Optional.empty());
  }

  private static Marked right(Part part, Place place) {
    return new Marked(Optional.of(part.kind()), Optional.empty(), Optional.of(place.spot()));
  }

  private static final class Finding implements VerdictVisitor<Marked> {
    @Override
    public Marked rightPlace(Verdict.RightPlace right) {
      return right(right.part(), right.place());
    }

    @Override
    public Marked wrongPlace(Misplaced.WrongPlace wrong) {
      return both(wrong.part(), wrong.place().spot(), wrong.belongs().place().spot());
    }

    @Override
    public Marked wrongMate(Misplaced.WrongMate wrong) {
      Spot home = wrong.part().home().spot();
      Spot here = wrong.place().spot();
      return home.equals(here) ? wrong(wrong.part(), here) : both(wrong.part(), here, home);
    }

    @Override
    public Marked wrongKind(Misplaced.WrongKind wrong) {
      return both(wrong.part(), wrong.spot(), wrong.part().home().spot());
    }

    @Override
    public Marked wrongHalf(Misplaced.WrongHalf wrong) {
      return both(wrong.part(), wrong.place().spot(), wrong.part().home().spot());
    }

    @Override
    public Marked wrongEnd(Misplaced.WrongEnd wrong) {
      return wrong(wrong.part(), wrong.place().spot());
    }

    @Override
    public Marked placeTaken(Verdict.PlaceTaken taken) {
      return wrong(taken.part(), taken.place().spot());
    }

    @Override
    public Marked alreadyFitted(Verdict.AlreadyFitted fitted) {
      return fitted.stops()
          ? both(fitted.part(), fitted.place().spot(), fitted.fittedAt().spot())
          : right(fitted.part(), fitted.place());
    }

    @Override
    public Marked fittedBut(Verdict.FittedBut fitted) {
      return right(fitted.part(), fitted.place());
    }

    @Override
    public Marked notCleared(Verdict.NotCleared held) {
      return right(held.part(), held.place());
    }

    @Override
    public Marked mustBeNew(Verdict.MustBeNew must) {
      return wrong(must.part(), must.place().spot());
    }

    @Override
    public Marked retired(Verdict.Retired retired) {
      return wrong(retired.part(), retired.part().home().spot());
    }

    @Override
    public Marked leftStanding(LeftStanding left) {
      Optional<PartKind> kind = left.part().map(Part::kind);
      return new Marked(kind, left.spot(), left.part().map(part -> part.home().spot()));
    }

    @Override
    public Marked code(CodeVerdict code) {
      return NOTHING;
    }
  }
}
