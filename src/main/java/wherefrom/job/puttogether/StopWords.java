package wherefrom.job.puttogether;

import java.util.Optional;
import wherefrom.job.EngineJob;
import wherefrom.job.JobPartNames;
import wherefrom.job.LastDecision;
import wherefrom.job.StandingRule;
import wherefrom.job.entry.DecisionEntry;
import wherefrom.parts.Part;
import wherefrom.rules.Hold;
import wherefrom.rules.Verdict;
import wherefrom.text.Words;

/** What is said of a stop beside the words of its verdict, as the job goes on. */
public final class StopWords {
  private StopWords() {}

  /** Why it stops, in the small line; of several checks which one it is. */
  public static String small(EngineJob job, Verdict verdict) {
    String why = check(job, verdict).orElse(verdict.words(new JobPartNames(job)).small());
    String which =
        findHeld(verdict)
            .filter(held -> held.hold() == Hold.CHECK_OPEN)
            .map(held -> job.rules().checksOf(held.part(), held.place()))
            .orElse("");
    String decided =
        findHeld(verdict)
            .filter(held -> held.hold() == Hold.TO_REPLACE)
            .map(held -> reason(job, held.part()))
            .filter(words -> !words.isBlank())
            .map(words -> " Reason: " + words + ".")
            .orElse("");
    why = why + decided;
    return which.isEmpty() ? why : (Words.sentence(Words.capital(which)) + " " + why).strip();
  }

  /** The check to do, without that it is open: that stands above it in large letters. */
  private static Optional<String> check(EngineJob job, Verdict verdict) {
    return job.rules()
        .findOpenCheck(against(verdict).openCheck())
        .map(StandingRule::consequence)
        .map(check -> Words.withoutStop(check.sentence()) + " (" + check.ruleWords() + ").");
  }

  /**
   * Why a new part comes in place of the one that a verdict stops: as the verdict says it, so that
   * nobody is asked again; empty where it says nothing of that.
   */
  public static Optional<String> newPart(EngineJob job, Verdict verdict) {
    Verdict against = against(verdict);
    if (against instanceof Verdict.MustBeNew) {
      return Optional.of("must be new");
    }
    return findHeld(against)
        .filter(held -> held.hold() == Hold.TO_REPLACE)
        .map(held -> decided(job, held.part()));
  }

  private static Verdict against(Verdict verdict) {
    return verdict instanceof Verdict.FittedBut fitted ? fitted.against() : verdict;
  }

  private static Optional<Verdict.NotCleared> findHeld(Verdict verdict) {
    return against(verdict) instanceof Verdict.NotCleared held
        ? Optional.of(held)
        : Optional.empty();
  }

  private static String decided(EngineJob job, Part part) {
    return Optional.of(reason(job, part)).filter(it -> !it.isBlank()).orElse("must be new");
  }

  private static String reason(EngineJob job, Part part) {
    return LastDecision.find(job, part.item()).map(DecisionEntry::reason).orElse("");
  }
}
