package wherefrom.ui.puttogether;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.job.EngineJob;
import wherefrom.job.JobPartNames;
import wherefrom.job.PartRecord;
import wherefrom.job.Unmated;
import wherefrom.job.Untagged;
import wherefrom.job.puttogether.FitMode;
import wherefrom.job.puttogether.FitOutcome;
import wherefrom.job.puttogether.StopWords;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.CodeVerdict;
import wherefrom.rules.Cue;
import wherefrom.rules.PartNames;
import wherefrom.rules.Unlisted;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictWords;
import wherefrom.text.Words;
import wherefrom.ui.app.UndoWords;
import wherefrom.ui.controls.ScreenAnswer;
import wherefrom.ui.takeapart.PartName;

/** Steps of putting together, as they stand on the screen. */
final class Answers {
  /** What is said once a reason is chosen. */
  static final String NOT_YET =
      "Not fitted yet. Hold the key. By cards: NEXT to it, then YES twice.";

  private static final String ON_PURPOSE = "Fitted on purpose";

  private Answers() {}

  /** What is drawn while nothing is asked for. */
  static PartKind firstKind(EngineJob job) {
    return job.kinds().stream().sorted().findFirst().orElseThrow();
  }

  /** What the headline says is not said again. */
  private static String said(String sentence) {
    String again = ON_PURPOSE + ": ";
    return sentence.startsWith(again)
        ? Words.capital(sentence.substring(again.length()))
        : sentence;
  }

  static ScreenAnswer of(EngineJob job, FitOutcome step) {
    return step.match(
        judged -> judged(job, judged.verdict()),
        waiting -> waiting(job, waiting),
        Answers::waiting,
        shown -> place(job, "It goes here", shown.part().part().home(), shown.sentence()),
        next -> place(job, "Next place", next.place(), wanted(job, next.place())),
        fitted -> onPurpose(job, fitted),
        back -> ScreenAnswer.said("Taken back", tookBack(job, back)),
        said -> ScreenAnswer.said("", said.sentence()));
  }

  private static ScreenAnswer waiting(EngineJob job, FitOutcome.WaitingForSpot waiting) {
    Part part = waiting.part().part();
    ScreenAnswer answer =
        place(job, "Part in hand", part.home(), "Now scan the place card by the hole, or tap it.");
    return waiting.replaced() ? answer.withCue(Cue.ASK) : answer;
  }

  private static ScreenAnswer waiting(FitOutcome.WaitingForPart waiting) {
    ScreenAnswer answer =
        new ScreenAnswer(
            Optional.empty(),
            "Place",
            List.of(Words.capital(waiting.spot().brief())),
            waiting.spot().words() + ". Now scan the part.",
            Optional.empty(),
            Set.of(waiting.spot()));
    return waiting.replaced() ? answer.withCue(Cue.ASK) : answer;
  }

  /** What stands when the screen comes up: parts that cannot be fitted yet are counted first. */
  static ScreenAnswer start(int undecided, ScreenAnswer prompt, Optional<Place> next) {
    if (undecided == 0) {
      return prompt;
    }
    String waiting = undecided == 1 ? "1 part waits" : undecided + " parts wait";
    String first = next.map(at -> "Next: " + PartNames.NUMBERS.named(at) + ". ").orElse("");
    return ScreenAnswer.said(waiting + " for a decision", first + prompt.small());
  }

  /** What the camera asks for; a half that waits is named, so that it is not forgotten. */
  static ScreenAnswer asking(String hint, ScreenAnswer due) {
    return ScreenAnswer.notRead(hint, waiting(due));
  }

  /**
   * A step that leaves what is due as it is: it gets its own answer, beside what waits.
   *
   * @param due what the person is to do, in the words that stand for it
   */
  static ScreenAnswer beside(ScreenAnswer next, ScreenAnswer due) {
    if (next.cue().isPresent()) {
      return next.saying((next.small() + " " + waiting(due)).strip());
    }
    return due.lines().isEmpty() ? next : due.saying(next.small());
  }

  /**
   * Whether what is due stays as it is: plain words, a code that stands for nothing here, a step
   * that was taken back while the list is followed.
   */
  static boolean leavesDue(FitOutcome step, FitMode mode) {
    return step.match(
        judged -> judged.verdict() instanceof CodeVerdict && judged.verdict().cue() == Cue.ASK,
        spot -> false,
        part -> false,
        shown -> false,
        next -> false,
        fitted -> false,
        back -> mode == FitMode.FOLLOW_THE_LIST,
        said -> true);
  }

  /** The step in few words, parts by their names on the glass, and how its place stands now. */
  private static String tookBack(EngineJob job, FitOutcome.TookBack back) {
    String step = back.step().map(it -> UndoWords.of(job, Optional.of(it))).orElseGet(back::words);
    return (Words.capital(step) + ". " + back.now()).strip();
  }

  /** What came of a step, in the small line of something else that stands on the screen. */
  static String inLine(FitOutcome step, ScreenAnswer said) {
    String words = said.small().isEmpty() ? said.headline() : said.small();
    return step instanceof FitOutcome.TookBack ? said.headline() + ": " + words : words;
  }

  private static String waiting(ScreenAnswer due) {
    return due.lines().isEmpty()
        ? ""
        : due.headline() + ": " + String.join(", ", due.lines()) + ".";
  }

  private static ScreenAnswer judged(EngineJob job, Verdict verdict) {
    VerdictWords words = verdict.words(new JobPartNames(job));
    Marked marked = Marked.of(verdict);
    if (isUnproven(job, verdict, marked)) {
      return new ScreenAnswer(
          Optional.of(Cue.ASK), "No tag on it", words.lines(), "", marked.kind(), marked.spots());
    }
    boolean misread = verdict instanceof CodeVerdict.DigitsDisagree;
    String told = misread ? "Or type its six digits." : words.told();
    return new ScreenAnswer(
        Optional.of(verdict.cue()),
        misread ? verdict.word() + ": scan it again" : verdict.word(),
        words.lines(),
        verdict.cue() == Cue.ASK ? told : StopWords.small(job, verdict),
        marked.kind(),
        marked.spots());
  }

  /** What sits there had no tag: that it belongs there is what a person said. */
  private static boolean isUnproven(EngineJob job, Verdict verdict, Marked marked) {
    return verdict.cue() == Cue.RIGHT
        && marked
            .place()
            .flatMap(job::findFitted)
            .filter(part -> Untagged.is(job, part.item()))
            .isPresent();
  }

  /** Which part it is, by where it came from, and where it sits now. */
  private static ScreenAnswer onPurpose(EngineJob job, FitOutcome.FittedOnPurpose fitted) {
    Place at = fitted.place();
    Place from = job.findFitted(at).map(Part::home).orElse(at);
    ScreenAnswer named = place(job, ON_PURPOSE, from, said(fitted.sentence()));
    List<String> lines = List.of(named.lines().get(0), "now in " + at.brief());
    return new ScreenAnswer(
        named.cue(), ON_PURPOSE, lines, named.small(), Optional.of(at.kind()), Set.of(at.spot()));
  }

  /** A stop that is about to be overruled: what is no longer mated then. The key says why. */
  static ScreenAnswer onPurpose(ScreenAnswer stop, Unmated unmated) {
    String mates = unmated.mates();
    String then = "Then " + Words.small(mates);
    List<String> lines = List.of(then, unmated.opened());
    return new ScreenAnswer(
        stop.cue(),
        stop.headline(),
        lines.stream().filter(line -> !line.isEmpty()).toList(),
        NOT_YET,
        stop.kind(),
        stop.lit());
  }

  private static ScreenAnswer place(EngineJob job, String headline, Place place, String small) {
    return new ScreenAnswer(
        Optional.empty(),
        headline,
        List.of(PartName.of(job.layout(), place).words()),
        small,
        Optional.of(place.kind()),
        Set.of(place.spot()));
  }

  /** The part that was in the hand at this place is no more. */
  static String letGo(EngineJob job, Place place) {
    return "Let go: " + PartName.of(job.layout(), place).inLine() + ".";
  }

  /** What was recorded as in a place is in the hand: who knows what sits there. */
  static String emptied(Place place) {
    return "Recorded as empty: " + place.brief() + ". Look what sits there.";
  }

  /** Which part is wanted at a place, and where it lies. */
  private static String wanted(EngineJob job, Place place) {
    return job.bench()
        .findRightful(place)
        .map(
            part -> {
              PartRecord record = job.getPart(part.item());
              return "Scan its part, "
                  + part.code(job.engine()).typed()
                  + ". It is "
                  + record.where().words()
                  + record.awayTo().map(to -> ", " + to).orElse("")
                  + ".";
            })
        .orElse(Unlisted.SENTENCE);
  }
}
