package wherefrom.rules;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.parts.Action;

/**
 * Verdicts on a code that stands for no part of this job: no place has to be named. Each knows its
 * own words, as no part is told of.
 */
public sealed interface CodeVerdict extends Verdict {

  /** The words, where this job is called so. */
  VerdictWords words(String job);

  @Override
  default VerdictWords words(PartNames names) {
    return words(names.job());
  }

  @Override
  default <R> R accept(VerdictVisitor<R> visitor) {
    return visitor.code(this);
  }

  @Override
  default Cue cue() {
    return Cue.ASK;
  }

  /** Whether the logbook has it that the code was read; a question alone leaves no entry. */
  @Override
  default boolean isLogged() {
    return true;
  }

  private static VerdictWords asked(String sentence, String advice) {
    return VerdictWords.of(List.of(), "", sentence, advice, WayOut.SCAN_RIGHT_PART);
  }

  /**
   * A valid tag of another job.
   *
   * @param jobName that job's name, where it is known
   */
  record WrongEngine(int engine, Optional<String> jobName) implements CodeVerdict {
    static final String ADVICE =
        "Keep the two engines' parts apart. Put this one back with its own engine.";

    @Override
    public VerdictName name() {
      return VerdictName.WRONG_ENGINE;
    }

    @Override
    public VerdictWords words(String job) {
      String whose = jobName.map(name -> ": " + name).orElse(", which is not known here");
      return VerdictWords.of(
          List.of(
              new Fact("Tag of", jobName.orElse("another engine")),
              new Fact("Here", job),
              Fact.said("Keep them apart")),
          "Put it back with its own engine.",
          "This tag belongs to another engine" + whose + ".",
          ADVICE,
          WayOut.SCAN_RIGHT_PART);
    }

    @Override
    public Cue cue() {
      return Cue.STOP;
    }
  }

  /** A code that was never issued here. */
  record NotOneOfOurs(String text, boolean ourForm) implements CodeVerdict {
    @Override
    public VerdictName name() {
      return VerdictName.NOT_ONE_OF_OURS;
    }

    @Override
    public VerdictWords words(String job) {
      return ourForm
          ? asked(
              "The digits agree, but no such tag was issued for this job.",
              "Is the right job open? Or type the six digits of the tag.")
          : asked("This is not one of our tags.", "Scan the tag with the black frame.");
    }
  }

  /** A code whose check digits do not agree. */
  record DigitsDisagree(String digits) implements CodeVerdict {
    @Override
    public VerdictName name() {
      return VerdictName.DIGITS_DISAGREE;
    }

    @Override
    public VerdictWords words(String job) {
      return asked(
          digits + ": check digits wrong.", "Scan it again, or type its six digits again.");
    }
  }

  /**
   * A typed code that can stand for more than one tag: six digits cannot tell them apart, or a
   * single slip lies between them.
   *
   * @param typed as it stands on the tag, {@code 0173 88}
   * @param here the sixteen digits of each tag of this job that it can be, and what that stands for
   * @param near the same of the tags that were meant where one slip was made
   * @param others the names of other jobs that have such a tag
   */
  record AlsoFits(
      String typed, Map<String, String> here, Map<String, String> near, List<String> others)
      implements CodeVerdict {
    public AlsoFits {
      here = Collections.unmodifiableMap(new LinkedHashMap<>(here));
      near = Collections.unmodifiableMap(new LinkedHashMap<>(near));
      others = List.copyOf(others);
    }

    /** Where no tag lies one slip away. */
    public AlsoFits(String typed, Map<String, String> here, List<String> others) {
      this(typed, here, Map.of(), others);
    }

    @Override
    public VerdictName name() {
      return near.isEmpty() ? VerdictName.WHICH_ENGINE : VerdictName.WHICH_TAG;
    }

    @Override
    public boolean isLogged() {
      return false;
    }

    @Override
    public VerdictWords words(String job) {
      String means = "Typed " + typed + " is " + String.join(", or ", here.values());
      String slip = near.isEmpty() ? "" : "; one slip off: " + String.join(", ", near.values());
      return others.isEmpty()
          ? asked(means + slip + ".", "Scan the tag, or type its sixteen digits.")
          : asked(
              means + slip + "; it also fits job " + String.join(", ", others) + ".",
              "Scan the tag, or confirm it is this engine's.");
    }
  }

  /**
   * The figures of an action card, typed. Those of a part's tag are one slip away, so that typing
   * them does nothing: the card can be scanned, and each has a key.
   *
   * @param digits as they were typed
   */
  record TypedCard(String digits, Action action) implements CodeVerdict {
    @Override
    public VerdictName name() {
      return VerdictName.TYPED_CARD;
    }

    @Override
    public boolean isLogged() {
      return false;
    }

    @Override
    public VerdictWords words(String job) {
      String key =
          switch (action) {
            case UNDO -> "press UNDO.";
            case HELP -> "press Help.";
            case SKIP, NEXT, REPEAT, YES -> "scan it, or press its key.";
          };
      return asked(
          digits + " is the card " + action.name() + ": " + key,
          "Nothing was done. Is it a part?" + " Type its six digits again.");
    }
  }
}
