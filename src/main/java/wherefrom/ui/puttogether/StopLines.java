package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import wherefrom.engine.Spot;
import wherefrom.job.EngineJob;
import wherefrom.job.Unmated;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.CodeVerdict;
import wherefrom.rules.Cue;
import wherefrom.rules.LeftStanding;
import wherefrom.rules.Verdict;
import wherefrom.text.Words;
import wherefrom.ui.controls.Answer;

/** A stop in three lines that can be read from the engine, with the places it speaks of. */
final class StopLines {
  private final EngineJob job;

  StopLines(EngineJob job) {
    this.job = job;
  }

  Answer of(Verdict verdict) {
    if (verdict instanceof Verdict.OtherPlace other) {
      return answer(
          verdict,
          other.part(),
          other.place().spot(),
          came(other.part()),
          at(other.place().spot()),
          right(other.rightPart()));
    }
    if (verdict instanceof Verdict.WrongHalf half) {
      return answer(
          verdict,
          half.part(),
          half.place().spot(),
          came(half.part()),
          at(half.place().spot()),
          right(job.findOwner(half.place())));
    }
    if (verdict instanceof Verdict.WrongKind kind) {
      String first = "This is a " + kind.part().kind().word();
      String last = "It belongs at " + kind.part().home().figures();
      return answer(verdict, kind.part(), kind.spot(), first, at(kind.spot()), last);
    }
    if (verdict instanceof Verdict.WrongEnd end) {
      String first = name(end.part()) + " is turned";
      String mark = "Mark: " + end.orientation().mark();
      Spot spot = end.place().spot();
      return answer(verdict, end.part(), spot, first, mark, "Turn it, scan it again");
    }
    if (verdict instanceof Verdict.WrongMate mate) {
      String own = "It belongs with the " + mate.own().kind().word() + " from ";
      return answer(
          verdict,
          mate.part(),
          mate.place().spot(),
          came(mate.part()),
          own + mate.own().home().figures(),
          right(mate.rightPart()));
    }
    return taken(verdict);
  }

  /** A stop that is about to be overruled: what is no longer mated then. The key says why. */
  static Answer onPurpose(Answer stop, Unmated unmated) {
    String mates = unmated.mates();
    String then = "Then " + mates.substring(0, 1).toLowerCase(Locale.ROOT) + mates.substring(1);
    List<String> lines = List.of(then, unmated.opened());
    return new Answer(
        stop.cue(),
        stop.headline(),
        lines.stream().filter(line -> !line.isEmpty()).toList(),
        "",
        stop.kind(),
        stop.lit());
  }

  /** What stands against a part that sits where it is spoken of. */
  private static String against(Verdict verdict) {
    if (verdict instanceof Verdict.NotCleared held) {
      return sentence(held.why());
    }
    return verdict instanceof Verdict.MustBeNew must ? must.ban().reason() : verdict.sentence();
  }

  private Answer taken(Verdict verdict) {
    if (verdict instanceof Verdict.PlaceTaken taken) {
      return answer(
          verdict,
          taken.part(),
          taken.place().spot(),
          "In your hand: " + typed(taken.part()) + " from " + taken.part().home().figures(),
          "Fitted here: " + typed(taken.fitted()) + " from " + taken.fitted().home().figures(),
          at(taken.place().spot()));
    }
    if (verdict instanceof Verdict.AlreadyFitted fitted) {
      return answer(
          verdict,
          fitted.part(),
          fitted.place().spot(),
          name(fitted.part()) + " is fitted",
          "It is fitted at " + fitted.fittedAt().figures(),
          at(fitted.place().spot()));
    }
    return held(verdict);
  }

  private Answer held(Verdict verdict) {
    if (verdict instanceof Verdict.FittedBut fitted) {
      return new Answer(
          Optional.of(verdict.cue()),
          verdict.word(),
          List.of(name(fitted.part()) + " is fitted, but:", against(fitted.against())),
          verdict.wayOut(),
          Optional.of(fitted.part().kind()),
          Set.of(fitted.place().spot()));
    }
    if (verdict instanceof Verdict.NotCleared held) {
      return held(verdict, held.part(), held.place(), name(held.part()), sentence(held.why()));
    }
    if (verdict instanceof Verdict.MustBeNew must) {
      Part part = must.part();
      String first = name(part) + ": " + verdict.word();
      return held(verdict, part, must.place(), first, must.ban().reason());
    }
    if (verdict instanceof Verdict.Retired retired) {
      Part part = retired.part();
      return held(verdict, part, part.home(), name(part), sentence(retired.why()));
    }
    if (verdict instanceof CodeVerdict.OtherEngine other) {
      String whose = other.jobName().orElse("an engine not known here");
      return plain(verdict, List.of("This tag belongs to " + whose, "You are at " + job.name()));
    }
    if (verdict instanceof LeftStanding left) {
      return left(left);
    }
    if (verdict.cue() == Cue.ASK) {
      return new Answer(
          Optional.of(Cue.ASK),
          verdict.word(),
          List.of(),
          verdict.sentence() + " " + verdict.wayOut(),
          Optional.empty(),
          Set.of());
    }
    return plain(verdict, List.of(verdict.sentence()));
  }

  /** The word stands in a line of its own: it cannot be told any more by what was judged. */
  private static Answer left(LeftStanding left) {
    Set<Spot> lit = new LinkedHashSet<>();
    left.part().map(part -> part.home().spot()).ifPresent(lit::add);
    left.spot().ifPresent(lit::add);
    List<String> lines = new ArrayList<>(List.of(sentence(left.word()), left.sentence()));
    if (left.isSettled()) {
      lines.add("Settled since: scan it again");
    }
    return new Answer(
        Optional.of(left.cue()),
        left.word(),
        lines,
        left.isSettled() ? "" : left.wayOut(),
        left.part().map(Part::kind),
        lit);
  }

  private static Answer held(Verdict verdict, Part part, Place place, String first, String why) {
    List<String> lines = List.of(first, why, verdict.wayOut());
    return new Answer(
        Optional.of(verdict.cue()),
        verdict.word(),
        lines.stream().filter(line -> !line.isEmpty()).toList(),
        "",
        Optional.of(part.kind()),
        Set.of(place.spot()));
  }

  private static Answer plain(Verdict verdict, List<String> lines) {
    return new Answer(
        Optional.of(verdict.cue()),
        verdict.word(),
        lines,
        verdict.wayOut(),
        Optional.empty(),
        Set.of());
  }

  private String small(Verdict verdict) {
    if (verdict instanceof Verdict.OtherPlace other) {
      return where(other.rightPart());
    }
    return verdict instanceof Verdict.WrongHalf half
        ? "Upper and lower shells are never exchanged. " + where(job.findOwner(half.place()))
        : verdict.wayOut();
  }

  private Answer answer(
      Verdict verdict, Part part, Spot at, String first, String second, String third) {
    Set<Spot> lit = part.home().spot().equals(at) ? Set.of(at) : Set.of(part.home().spot(), at);
    PartKind kind = part.kind();
    return new Answer(
        Optional.of(verdict.cue()),
        verdict.word(),
        List.of(first, second, third),
        small(verdict),
        Optional.of(kind),
        lit);
  }

  private static String came(Part part) {
    return (part.fresh() ? "This new one is for " : "This came from ") + part.home().figures();
  }

  private static String at(Spot spot) {
    return "You are at " + spot.figures();
  }

  private static String name(Part part) {
    return part.home().figures() + " " + (part.fresh() ? "new " : "") + part.kind().word();
  }

  private String right(Optional<Part> right) {
    return right.map(part -> "Right part: " + typed(part)).orElse("No part is listed here");
  }

  /** The right part's kind and where it lies: {@code The right part is out, on the bench.} */
  private String where(Optional<Part> right) {
    return right
        .map(part -> job.getPart(part.item()))
        .map(
            record ->
                "The right part is "
                    + record.where().words()
                    + record.awayTo().map(to -> ", " + to).orElse("")
                    + ".")
        .orElse("");
  }

  private String typed(Part part) {
    return part.code(job.engine()).typed();
  }

  private static String sentence(String why) {
    return Words.capital(Words.unstopped(why));
  }
}
