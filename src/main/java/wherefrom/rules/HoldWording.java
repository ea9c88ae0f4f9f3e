package wherefrom.rules;

import java.util.ArrayList;
import java.util.List;
import wherefrom.engine.Spot;
import wherefrom.parts.Home;
import wherefrom.parts.Part;
import wherefrom.text.Words;

/** The words of what holds a part that may be at its own place. */
final class HoldWording {
  private final PartNames names;
  private final VerdictVisitor<VerdictWords> all;

  /**
   * @param all the words of every verdict, for what stands against a part that is fitted
   */
  HoldWording(PartNames names, VerdictVisitor<VerdictWords> all) {
    this.names = names;
    this.all = all;
  }

  VerdictWords fittedBut(Verdict.FittedBut fitted) {
    VerdictWords against = fitted.against().accept(all);
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("Fitted, but", names.place(fitted.place())));
    against.against().stream().limit(2).forEach(facts::add);
    boolean deed = !against.first().isScan();
    return VerdictWords.of(
        facts,
        against.small(),
        "It is fitted, but: " + against.sentence(),
        (fitted.canStay() ? "Take it out, or say why it stays. " : "Take it out. ")
            + against.advice(),
        deed ? against.first() : WayOut.PAGE);
  }

  VerdictWords notCleared(Verdict.NotCleared held) {
    Part part = held.part();
    List<Fact> why = new ArrayList<>();
    why.add(new Fact(part.kind().word(), held.hold().words()));
    names
        .findFound(part)
        .filter(found -> isDoubted(held))
        .ifPresent(found -> why.add(new Fact("Found", found.look())));
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("Not cleared", names.place(held.place())));
    facts.addAll(why);
    return VerdictWords.of(
            facts,
            small(held),
            Words.capital(part.words()) + " is not cleared to fit: " + held.why() + ".",
            held.hold().advice(),
            held.hold().first())
        .against(why);
  }

  private static boolean isDoubted(Verdict.NotCleared held) {
    return held.hold() == Hold.FOUND_BAD || held.hold() == Hold.NOT_DECIDED;
  }

  /** Which check was in doubt, or else what keeps the part. */
  private String small(Verdict.NotCleared held) {
    String why =
        names
            .findFound(held.part())
            .filter(found -> isDoubted(held))
            .map(PartNames.Found::check)
            .orElse(Words.capital(held.why()));
    return Words.withStop(why);
  }

  /** A part that is new already is of the wrong size or sort, or wore in with what was changed. */
  VerdictWords mustBeNew(Verdict.MustBeNew must) {
    Part part = must.part();
    String kind = part.kind().word();
    boolean fresh = part.fresh();
    Fact wanted = fresh ? new Fact("Wanted", "another one") : new Fact("New", "none yet");
    return VerdictWords.of(
            List.of(
                new Fact("Must be new", names.place(must.place())),
                new Fact("You hold", fresh ? VerdictWords.hand(part) : "the old one"),
                wanted),
            must.ban().reason(),
            must.ban().words() + ".",
            "Replace it with " + (fresh ? "another" : "a") + " new " + kind + " and print its tag.",
            WayOut.NEW_PART)
        .against(List.of(new Fact(kind, "must be new"), wanted));
  }

  VerdictWords retired(Verdict.Retired retired) {
    return retired.isTagOnly() ? oldTag(retired.part()) : replaced(retired);
  }

  private VerdictWords oldTag(Part part) {
    return VerdictWords.of(
        List.of(
            new Fact("Old tag", names.place(part.home())), new Fact("Newer tag", names.code(part))),
        Words.capital(part.kind().word()) + ". Take the old tag off and destroy it.",
        Words.capital(part.words()) + ": this is an older tag. It was printed again since.",
        "Take this tag off and destroy it. Use the newer one, " + names.code(part) + ".",
        WayOut.SCAN_NEWER_TAG);
  }

  private VerdictWords replaced(Verdict.Retired retired) {
    Part part = retired.part();
    return VerdictWords.of(
        List.of(
            new Fact("Must be new", names.place(part.home())),
            new Fact("You hold", "the old one"),
            new Fact("New", retired.inUse().map(names::code).orElse("none yet"))),
        Words.capital(part.kind().word()) + ". The old one is retired.",
        Words.capital(part.words()) + ": this part was replaced and is retired.",
        retired
            .inUse()
            .map(fresh -> "Fit the part in use, " + names.code(fresh) + ".")
            .orElse("Take it off the bench."),
        WayOut.SCAN_NEW_PART);
  }

  VerdictWords leftStanding(LeftStanding left) {
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("Stopped", left.isOfOldTag() ? "old tag" : left.word()));
    if (!left.isAtHome()) {
      left.part().ifPresent(part -> facts.add(new Fact("From", names.place(part.home()))));
    }
    left.spot().ifPresent(spot -> facts.add(new Fact("Here", here(left, spot))));
    if (left.isSettled()) {
      if (left.isAtHome()) {
        facts.add(new Fact("Since then", "settled"));
      }
      return VerdictWords.of(
          facts,
          "What stood against it is settled since. It said: " + left.sentence(),
          left.sentence(),
          "What spoke against it is settled. Scan it again, or undo the scan.",
          WayOut.SCAN_AGAIN);
    }
    if (left.isOfOldTag()) {
      String then = "Take this tag off and destroy it. Scan the newer one.";
      return VerdictWords.of(facts, left.sentence(), left.sentence(), then, WayOut.SCAN_NEWER_TAG);
    }
    String advice =
        left.isOfWrongEngine()
            ? CodeVerdict.WrongEngine.ADVICE
            : "Put it aside and take its tag off. Scan the right part, or undo the scan.";
    return VerdictWords.of(facts, left.sentence(), left.sentence(), advice, WayOut.SCAN_RIGHT_PART);
  }

  /** At a valve four parts live: whichever was stopped at home is named with it. */
  private static String here(LeftStanding left, Spot spot) {
    return left.part()
        .filter(part -> left.isAtHome() && part.kind().home() == Home.VALVE)
        .map(part -> spot.brief() + " " + part.kind().word())
        .orElse(spot.brief());
  }
}
