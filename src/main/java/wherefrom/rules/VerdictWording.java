package wherefrom.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.parts.Home;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.text.Words;

/** The words of every verdict. They stand here and nowhere else. */
final class VerdictWording implements VerdictVisitor<VerdictWords> {
  private final PartNames names;
  private final HoldWording holds;

  VerdictWording(PartNames names) {
    this.names = names;
    this.holds = new HoldWording(names, this);
  }

  private Fact here(Place place) {
    return new Fact("Here", names.place(place));
  }

  private Fact from(Part part) {
    return new Fact(part.fresh() ? "New, for" : "From", names.place(part.home()));
  }

  /** One that may not go in is not asked for as if it could. */
  private Fact right(Optional<Part> right) {
    String code = right.map(names::code).orElse("none listed");
    return new Fact(
        "Right part", code + right.flatMap(names::findAgainst).map(", "::concat).orElse(""));
  }

  private Fact hand(Part part) {
    return new Fact("You hold", names.code(part));
  }

  /** Where the right part is: {@code Pushrod. The right part is on the bench.} */
  private String small(PartKind kind, Optional<Part> right) {
    String where = right.map(names::whereabouts).orElse("");
    String lies = where.isEmpty() ? "" : " The right part is " + where + ".";
    return Words.capital(kind.word()) + "." + lies;
  }

  private String rightPart(Optional<Part> right) {
    return right
        .map(part -> "The right part is " + names.code(part) + ".")
        .orElse(Unlisted.SENTENCE);
  }

  @Override
  public VerdictWords rightPlace(Verdict.RightPlace right) {
    Place place = right.place();
    return VerdictWords.of(
        List.of(Fact.said(names.place(place)), Fact.said(place.kind().word())),
        right.hint(),
        Words.capital(right.part().words()) + ": this is where it belongs.",
        right.hint(),
        WayOut.SCAN_AGAIN);
  }

  @Override
  public VerdictWords wrongPlace(Misplaced.WrongPlace wrong) {
    Part part = wrong.part();
    Fact right = right(wrong.rightPart());
    Fact from = wrong.belongs().with().isPresent() ? belongs(wrong) : from(part);
    return VerdictWords.of(
            List.of(from, here(wrong.place()), right),
            wrong.belongs().with().map(with -> goesWith(with) + ". ").orElse("")
                + small(part.kind(), wrong.rightPart()),
            cameFrom(wrong) + " You are at " + wrong.place().words() + ".",
            rightPart(wrong.rightPart()) + orThere(wrong.belongs().place()),
            WayOut.SCAN_RIGHT_PART)
        .against(List.of(from, right));
  }

  private Fact belongs(Misplaced.WrongPlace wrong) {
    return new Fact("Belongs at", names.place(wrong.belongs().place()));
  }

  private String goesWith(Part with) {
    return "It goes with the " + from(with, false);
  }

  private String orThere(Place own) {
    return " Or put this one at " + names.place(own) + ": scan that card.";
  }

  private String cameFrom(Misplaced.WrongPlace wrong) {
    Part part = wrong.part();
    Belonging belongs = wrong.belongs();
    if (belongs.with().isPresent()) {
      return "This goes with the "
          + from(belongs.with().get(), false)
          + ". That sits at "
          + names.place(belongs.place())
          + ".";
    }
    return part.fresh()
        ? "This new " + part.kind().word() + " is for " + part.home().words() + "."
        : "This came from " + part.home().words() + ".";
  }

  /** {@code rocker from 3 EX}, {@code new rod for rod 5}. */
  private String from(Part part, boolean sayNew) {
    boolean fresh = sayNew && part.fresh();
    String kind = (fresh ? "new " : "") + part.kind().word();
    return kind + (fresh ? " for " : " from ") + where(part);
  }

  /** Where it is from, in few words; a rod is not from a rod. */
  private String where(Part part) {
    return switch (part.kind()) {
      case ROD, PISTON -> "cylinder " + part.home().spot().brief().replaceAll("\\D", "");
      case MAIN_CAP -> names.place(part.home()).replace(", cap", "");
      default -> names.place(part.home());
    };
  }

  private String mate(Part own) {
    String at = names.place(own.home());
    return own.kind().home() == Home.VALVE ? own.kind().word() + " " + at : at;
  }

  @Override
  public VerdictWords wrongMate(Misplaced.WrongMate wrong) {
    Fact with = new Fact("Goes with", mate(wrong.own()));
    Fact right = right(wrong.rightPart());
    String seated =
        wrong.seated().map(here -> ". The " + from(here, true) + " is here.").orElse("");
    String replaced = seated.isEmpty() ? ", which was replaced." : seated;
    return VerdictWords.of(
            List.of(with, here(wrong.place()), right),
            small(wrong.part().kind(), wrong.rightPart()),
            Words.capital(wrong.part().words())
                + ": it belongs with the "
                + from(wrong.own(), false)
                + replaced,
            wrong
                .rightPart()
                .map(right1 -> rightPart(wrong.rightPart()))
                .orElse(
                    "Fit the mate of what is here, or a new " + wrong.part().kind().word() + "."),
            WayOut.SCAN_RIGHT_PART)
        .against(List.of(with, right));
  }

  @Override
  public VerdictWords wrongKind(Misplaced.WrongKind wrong) {
    Part part = wrong.part();
    String kind = part.kind().word();
    String spot = wrong.spot().brief();
    String came = names.place(part.home());
    Optional<Place> wanted = wrong.wanted().map(one -> new Place(one, wrong.spot()));
    String here = wanted.map(names::named).orElse(spot);
    String sentence =
        wanted
            .map(place -> ". Wanted is the " + place.kind().word() + " of " + spot + ".")
            .orElse(". No " + kind + " belongs at " + spot + ".");
    Fact last = new Fact("It is from", came);
    boolean listed = wrong.rightPart().isPresent();
    return VerdictWords.of(
        List.of(
            new Fact("Here", here),
            new Fact("You hold", VerdictWords.hand(part)),
            listed ? right(wrong.rightPart()) : last),
        listed ? "The " + kind + " came from " + came + "." : "No " + kind + " belongs here.",
        "This is " + VerdictWords.hand(part) + " from " + came + sentence,
        listed ? rightPart(wrong.rightPart()) : "It belongs at " + part.home().words() + ".",
        WayOut.SCAN_RIGHT_PART);
  }

  @Override
  public VerdictWords wrongHalf(Misplaced.WrongHalf wrong) {
    Part part = wrong.part();
    return VerdictWords.of(
        List.of(from(part), here(wrong.place()), right(wrong.rightPart())),
        "Upper and lower shells are never exchanged.",
        "This is the "
            + part.home().words()
            + ". You are at "
            + wrong.place().words()
            + ". Upper and lower shells are never exchanged.",
        rightPart(wrong.rightPart()),
        WayOut.SCAN_RIGHT_PART);
  }

  @Override
  public VerdictWords wrongEnd(Misplaced.WrongEnd wrong) {
    Part part = wrong.part();
    String mark = wrong.orientation().mark();
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("Wrong end", names.place(wrong.place())));
    facts.addAll(
        switch (wrong.orientation()) {
          case TOP_END -> List.of(Fact.said("Bottom end is up"), Fact.said("Tagged end goes up"));
          case HALF -> List.of(Fact.said("Turned round"), new Fact("Tang", "into its notch"));
          case FACING, NONE -> List.of(Fact.said("Turned round"), new Fact("Mark", mark));
        });
    return VerdictWords.of(
        facts,
        Words.capital(part.kind().word()) + " " + names.code(part) + " is the right part.",
        "This is the right part for " + wrong.place().words() + ". It is turned: " + mark + ".",
        "Turn it round, then scan it again.",
        WayOut.TURN_IT);
  }

  @Override
  public VerdictWords placeTaken(Verdict.PlaceTaken taken) {
    Part fitted = taken.fitted();
    Part held = taken.part();
    boolean elsewhere = !held.home().equals(taken.place());
    return VerdictWords.of(
        List.of(
            new Fact("Place taken", names.place(taken.place())),
            new Fact("In it", names.origin(fitted)),
            elsewhere
                ? new Fact("Yours goes to", names.place(held.home()))
                : Fact.said("Yours is the right one")),
        "In it is " + names.code(fitted) + ". You hold " + names.code(held) + ".",
        Words.capital(taken.place().words())
            + " is taken. "
            + came("In it is", fitted)
            + " "
            + came("You hold", held),
        fitted.home().equals(taken.place())
            ? "Nothing is wrong with the one that is fitted. Put this one at its own place."
            : "Take out what is fitted here first.",
        elsewhere ? WayOut.SCAN_OWN_PLACE : WayOut.MAKE_ROOM);
  }

  private String came(String what, Part part) {
    return what + " " + names.code(part) + " from " + part.home().words() + ".";
  }

  @Override
  public VerdictWords alreadyFitted(Verdict.AlreadyFitted fitted) {
    Part part = fitted.part();
    if (fitted.isHere()) {
      return VerdictWords.of(
          List.of(Fact.said(names.place(fitted.place())), Fact.said(part.kind().word())),
          "It was fitted before.",
          "Already done: " + part.words() + " is fitted here.",
          "",
          WayOut.SCAN_AGAIN);
    }
    return VerdictWords.of(
        List.of(
            new Fact("Fitted at", names.place(fitted.fittedAt())),
            here(fitted.place()),
            hand(part)),
        Words.capital(part.kind().word()) + ". One part cannot be in two places.",
        "It is already fitted at "
            + fitted.fittedAt().words()
            + ". It cannot go into "
            + fitted.place().words()
            + " as well.",
        "Take it out there first, then scan it again.",
        WayOut.TAKE_OUT);
  }

  @Override
  public VerdictWords fittedBut(Verdict.FittedBut fitted) {
    return holds.fittedBut(fitted);
  }

  @Override
  public VerdictWords notCleared(Verdict.NotCleared held) {
    return holds.notCleared(held);
  }

  @Override
  public VerdictWords mustBeNew(Verdict.MustBeNew must) {
    return holds.mustBeNew(must);
  }

  @Override
  public VerdictWords retired(Verdict.Retired retired) {
    return holds.retired(retired);
  }

  @Override
  public VerdictWords leftStanding(LeftStanding left) {
    return holds.leftStanding(left);
  }

  @Override
  public VerdictWords code(CodeVerdict code) {
    return code.words(names);
  }
}
