package wherefrom.rules;

import java.util.Optional;
import wherefrom.engine.Spot;
import wherefrom.parts.Orientation;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.text.Words;

/** The answer to: this part, into this place. Each says in a sentence what is so and what to do. */
public sealed interface Verdict
    permits Verdict.RightPlace,
        Verdict.OtherPlace,
        Verdict.WrongMate,
        Verdict.WrongKind,
        Verdict.WrongHalf,
        Verdict.WrongEnd,
        Verdict.PlaceTaken,
        Verdict.AlreadyFitted,
        Verdict.FittedBut,
        Verdict.NotCleared,
        Verdict.MustBeNew,
        Verdict.Retired,
        LeftStanding,
        CodeVerdict {

  /** Which verdict it is. */
  VerdictName name();

  /** Its name in a word or three. */
  default String word() {
    return name().word();
  }

  /** What is so, for a person, in one or two sentences. */
  String sentence();

  /** What to do now. */
  String wayOut();

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
    public String sentence() {
      return Words.capital(part.words()) + ": this is where it belongs.";
    }

    @Override
    public String wayOut() {
      return hint;
    }

    @Override
    public Cue cue() {
      return Cue.RIGHT;
    }
  }

  /**
   * The part belongs at another place.
   *
   * @param belongs where, and with which part it goes where that is not its home
   * @param rightPart the part that belongs here
   */
  record OtherPlace(Part part, Place place, Belonging belongs, Optional<Part> rightPart)
      implements Verdict {
    @Override
    public VerdictName name() {
      return VerdictName.OTHER_PLACE;
    }

    @Override
    public String sentence() {
      return from() + " You are at " + place.words() + ".";
    }

    private String from() {
      return belongs
          .with()
          .map(
              with ->
                  "This goes with the "
                      + with.kind().word()
                      + " from "
                      + with.home().figures()
                      + ", which sits at "
                      + belongs.place().figures()
                      + ".")
          .orElseGet(
              () ->
                  part.fresh()
                      ? "This new " + part.kind().word() + " is for " + part.home().words() + "."
                      : "This came from " + part.home().words() + ".");
    }

    @Override
    public String wayOut() {
      return rightPart
          .map(right -> "The right part is number " + Words.number(right.item()) + ".")
          .orElse("No part is listed for this place.");
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
      implements Verdict {
    @Override
    public VerdictName name() {
      return VerdictName.WRONG_MATE;
    }

    @Override
    public String sentence() {
      String mate = own.kind().word() + " from " + own.home().figures();
      return Words.capital(part.words())
          + ": it belongs with the "
          + mate
          + seated
              .map(
                  here ->
                      ". The "
                          + (here.fresh() ? "new " : "")
                          + here.kind().word()
                          + (here.fresh() ? " for " : " from ")
                          + here.home().figures()
                          + " is here.")
              .orElse(", which was replaced.");
    }

    @Override
    public String wayOut() {
      return rightPart
          .map(right -> "The right part is number " + Words.number(right.item()) + ".")
          .orElse("Fit the mate of what is here, or a new " + part.kind().word() + ".");
    }
  }

  /** No part of this kind lives at this spot. */
  record WrongKind(Part part, Spot spot) implements Verdict {
    @Override
    public VerdictName name() {
      return VerdictName.WRONG_KIND;
    }

    @Override
    public String sentence() {
      return "This is a "
          + part.kind().word()
          + " from "
          + part.home().words()
          + ". None lives at "
          + spot.words()
          + ".";
    }

    @Override
    public String wayOut() {
      return "It belongs at " + part.home().words() + ".";
    }
  }

  /** An upper shell at a lower place, or the other way round. */
  record WrongHalf(Part part, Place place) implements Verdict {
    @Override
    public VerdictName name() {
      return VerdictName.WRONG_HALF;
    }

    @Override
    public String sentence() {
      return "This is the "
          + part.home().words()
          + ". You are at "
          + place.words()
          + ": upper and lower shells are never exchanged.";
    }

    @Override
    public String wayOut() {
      return "It belongs at " + part.home().words() + ".";
    }
  }

  /** The right part, but end for end or the other way round. */
  record WrongEnd(Part part, Place place, Orientation orientation) implements Verdict {
    @Override
    public VerdictName name() {
      return VerdictName.WRONG_END;
    }

    @Override
    public String sentence() {
      return "The "
          + part.kind().word()
          + " belongs at "
          + place.words()
          + ", but it is turned: "
          + orientation.mark()
          + ".";
    }

    @Override
    public String wayOut() {
      return "Turn it round, then scan it again.";
    }
  }

  /** Another part is fitted here. */
  record PlaceTaken(Part part, Place place, Part fitted) implements Verdict {
    @Override
    public VerdictName name() {
      return VerdictName.PLACE_TAKEN;
    }

    @Override
    public String sentence() {
      return Words.capital(place.words())
          + " already holds number "
          + Words.number(fitted.item())
          + " from "
          + fitted.home().words()
          + ". The part in your hand is number "
          + Words.number(part.item())
          + " from "
          + part.home().words()
          + ".";
    }

    @Override
    public String wayOut() {
      return fitted.home().equals(place)
          ? "Nothing is wrong with the one that is fitted. Put this one at its own place."
          : "Take out what is fitted here first.";
    }
  }

  /** The part is fitted: here, which is no alarm, or elsewhere, which is a stop. */
  record AlreadyFitted(Part part, Place place, Place fittedAt) implements Verdict {
    @Override
    public VerdictName name() {
      return VerdictName.ALREADY_FITTED;
    }

    @Override
    public String sentence() {
      return place.equals(fittedAt)
          ? "Already done: " + part.words() + " is fitted here."
          : "This part is recorded as fitted at "
              + fittedAt.words()
              + ". It cannot go into "
              + place.words()
              + " as well.";
    }

    @Override
    public String wayOut() {
      return place.equals(fittedAt) ? "" : "Take it out there first, then scan it again.";
    }

    @Override
    public Cue cue() {
      return place.equals(fittedAt) ? Cue.RIGHT : Cue.STOP;
    }
  }

  /**
   * The part is fitted here, and something stands against it now.
   *
   * @param against the most serious of it
   */
  record FittedBut(Part part, Place place, Verdict against) implements Verdict {
    @Override
    public VerdictName name() {
      return VerdictName.FITTED_BUT;
    }

    @Override
    public String sentence() {
      return "It is fitted, but: " + against.sentence();
    }

    @Override
    public String wayOut() {
      return "Take it out, or say why it stays. " + against.wayOut();
    }
  }

  /**
   * The part may not be fitted yet.
   *
   * @param hold what keeps it
   * @param check the key of the check that is open; empty where none is
   */
  record NotCleared(Part part, Place place, Hold hold, String why, String wayOut, String check)
      implements Verdict {
    @Override
    public VerdictName name() {
      return VerdictName.NOT_CLEARED;
    }

    @Override
    public String sentence() {
      return Words.capital(part.words()) + " is not cleared to fit: " + why + ".";
    }
  }

  /** A rule forbids the part. */
  record MustBeNew(Part part, Place place, Ban ban) implements Verdict {
    @Override
    public VerdictName name() {
      return VerdictName.MUST_BE_NEW;
    }

    @Override
    public String sentence() {
      return ban.words();
    }

    @Override
    public String wayOut() {
      return "Replace it by a new " + part.kind().word() + " and print its tag.";
    }
  }

  /** The part was replaced, or the tag is an older issue of a reprinted one. */
  record Retired(Part part, String why, String wayOut) implements Verdict {
    @Override
    public VerdictName name() {
      return VerdictName.RETIRED;
    }

    @Override
    public String sentence() {
      return Words.capital(part.words()) + ": " + why;
    }
  }
}
