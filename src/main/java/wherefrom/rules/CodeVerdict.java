package wherefrom.rules;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Verdicts on a code that stands for no part of this job: no place has to be named. */
public sealed interface CodeVerdict extends Verdict {

  @Override
  default Cue cue() {
    return Cue.ASK;
  }

  /**
   * A valid tag of another job.
   *
   * @param jobName that job's name, where it is known
   */
  record OtherEngine(int engine, Optional<String> jobName) implements CodeVerdict {
    static final String WAY_OUT =
        "Keep the two engines' parts apart. Put this one back with its own engine.";

    @Override
    public VerdictName name() {
      return VerdictName.OTHER_ENGINE;
    }

    @Override
    public String sentence() {
      return "This tag belongs to another engine"
          + jobName.map(name -> ": " + name).orElse(", which is not known here")
          + ".";
    }

    @Override
    public String wayOut() {
      return WAY_OUT;
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
    public String sentence() {
      return ourForm
          ? "The digits agree, but no such tag was issued for this job."
          : "This is not one of our tags.";
    }

    @Override
    public String wayOut() {
      return ourForm
          ? "Check that the right job is open, or type the six digits of the tag."
          : "Scan the tag with the black frame.";
    }
  }

  /** A code whose check digits do not agree. */
  record DigitsDisagree(String digits) implements CodeVerdict {
    @Override
    public VerdictName name() {
      return VerdictName.DIGITS_DISAGREE;
    }

    @Override
    public String sentence() {
      return "The digits " + digits + " do not agree with their check digits.";
    }

    @Override
    public String wayOut() {
      return "Scan it again, or type the six digits of the tag once more.";
    }
  }

  /**
   * A typed code that stands for more than one tag: six digits cannot tell them apart.
   *
   * @param typed as it stands on the tag, {@code 0173 88}
   * @param here the sixteen digits of each tag of this job that it can be, and what that stands for
   * @param others the names of other jobs that have such a tag
   */
  record AlsoFits(String typed, Map<String, String> here, List<String> others)
      implements CodeVerdict {
    public AlsoFits {
      here = Collections.unmodifiableMap(new LinkedHashMap<>(here));
      others = List.copyOf(others);
    }

    @Override
    public VerdictName name() {
      return VerdictName.WHICH_ENGINE;
    }

    @Override
    public String sentence() {
      String means = "Typed " + typed + " is " + String.join(", or ", here.values());
      return others.isEmpty()
          ? means + "."
          : means + "; it also fits job " + String.join(", ", others) + ".";
    }

    @Override
    public String wayOut() {
      return others.isEmpty()
          ? "Scan the tag, or type its sixteen digits."
          : "Scan the tag, or confirm it is this engine's.";
    }
  }
}
