package wherefrom.rules;

/** A method for each kind of verdict: the compiler sees that none is left out. */
public interface VerdictVisitor<R> {
  R rightPlace(Verdict.RightPlace right);

  R wrongPlace(Misplaced.WrongPlace wrong);

  R wrongMate(Misplaced.WrongMate wrong);

  R wrongKind(Misplaced.WrongKind wrong);

  R wrongHalf(Misplaced.WrongHalf wrong);

  R wrongEnd(Misplaced.WrongEnd wrong);

  R placeTaken(Verdict.PlaceTaken taken);

  R alreadyFitted(Verdict.AlreadyFitted fitted);

  R fittedBut(Verdict.FittedBut fitted);

  R notCleared(Verdict.NotCleared held);

  R mustBeNew(Verdict.MustBeNew must);

  R retired(Verdict.Retired retired);

  R leftStanding(LeftStanding left);

  /** A code that stands for no part of this job. */
  R code(CodeVerdict code);
}
