package wherefrom.job.phone;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.EngineJob;
import wherefrom.job.JobPartNames;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.puttogether.FitMode;
import wherefrom.job.puttogether.FitOutcome;
import wherefrom.job.puttogether.OnPurpose;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.puttogether.StopWords;
import wherefrom.job.tags.CodeLookup;
import wherefrom.parts.Action;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.Cue;
import wherefrom.rules.Unlisted;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictWords;
import wherefrom.rules.WayOut;
import wherefrom.text.Words;

/** Putting together at a phone, and where a part goes. */
final class PhoneTogether {
  private final OpenJob job;
  private final PutTogether together;

  /** The right place that was told last. */
  private Optional<Verdict.RightPlace> told = Optional.empty();

  PhoneTogether(OpenJob job) {
    this.job = job;
    this.together = new PutTogether(job);
  }

  private EngineJob state() {
    return job.state();
  }

  /** Whether a stop stands at this phone. */
  boolean isStopped() {
    return together.stop().isPresent();
  }

  /** Whether the stop that stands shows a part's code: typed, it may be copied from there. */
  boolean shows(Part part) {
    String typed = part.code(state().engine()).typed();
    return together.stop().stream()
        .flatMap(stop -> words(stop).facts().stream())
        .anyMatch(fact -> fact.value().contains(typed));
  }

  /** Whether the part that was told to be in its right place sits there yet. */
  boolean isSo() {
    return told.filter(it -> !state().findFitted(it.place()).equals(Optional.of(it.part())))
        .isEmpty();
  }

  /** What stands now: the stop, a half that waits, or what is next. */
  PhoneView due() {
    together.letGoOfEnded();
    together.resumeWaiting();
    return view(together.due());
  }

  PhoneView choose(FitMode mode) {
    return view(together.choose(mode));
  }

  PhoneView scan(CodeLookup found) {
    return view(together.scan(found));
  }

  /** A stop that a fit had ended waits again once that is taken back: nobody stands before it. */
  PhoneView undo() {
    FitOutcome step = together.act(Action.UNDO);
    if (step instanceof FitOutcome.TookBack back) {
      return view(together.due()).saying("Taken back: " + back.sentence());
    }
    return step instanceof FitOutcome.Said said ? due().saying(said.sentence()) : view(step);
  }

  /** The step that UNDO would take back; empty where it drops a half that waits. */
  Optional<LoggedEntry> findUndone() {
    return together.findUndone();
  }

  PhoneView skip() {
    return view(together.act(Action.SKIP));
  }

  PhoneView turned() {
    return view(together.turned());
  }

  PhoneView tookOut() {
    return view(together.tookOut());
  }

  PhoneView putAway() {
    return view(together.putAway());
  }

  PhoneView otherPlace() {
    return view(together.otherPlace());
  }

  /** Why the stopped part goes in all the same. */
  PhoneView askWhy() {
    if (!together.canFitOnPurpose()) {
      return due();
    }
    OnPurpose why = OnPurpose.of(together.stop().orElseThrow());
    List<PhoneKey> reasons = new ArrayList<>();
    why.reasons().usual().forEach(reason -> reasons.add(reasonKey(reason, reason)));
    reasons.add(reasonKey("", why.reasons().own()));
    reasons.add(PhoneKey.of(PhoneDeed.DUE, "Back"));
    return PhoneView.choice(why.question(), reasons);
  }

  /** Where it comes with no reason, the phone asks for words. */
  private static PhoneKey reasonKey(String reason, String words) {
    return new PhoneKey(PhoneDeed.REASON, reason, Words.capital(words), "");
  }

  /** The reason is chosen: what is no longer mated then, and the key that fits it. */
  PhoneView reason(String why) {
    if (!together.canFitOnPurpose()) {
      return due();
    }
    String mates = together.unmates().map(mated -> "Then " + Words.small(mated.words())).orElse("");
    return due()
        .saying(mates)
        .without()
        .withChoices(
            List.of(
                new PhoneKey(PhoneDeed.FIT, why, "Hold: " + why, "fits it on purpose"),
                PhoneKey.of(PhoneDeed.DUE, "Back")));
  }

  PhoneView fit(String why) {
    return view(together.fitOnPurpose(why));
  }

  private VerdictWords words(Verdict verdict) {
    return verdict.words(new JobPartNames(state()));
  }

  private PhoneView view(FitOutcome step) {
    told = Optional.empty();
    PhoneView view =
        step.match(
            judged -> judged(judged.verdict()),
            waiting -> at("Part in hand", waiting.part(), "Now photograph the place card."),
            waiting ->
                PhoneView.said("Place", "Now photograph the part.").at(waiting.spot().brief(), ""),
            shown -> shown(shown),
            next -> next(next.place()),
            fitted ->
                place(PhoneView.said("Fitted on purpose", fitted.sentence()), fitted.place())
                    .withCue(Cue.RIGHT),
            back -> PhoneView.said("Taken back", Words.capital(back.sentence())),
            said -> PhoneView.said("", said.sentence()));
    return isStopped() ? stopped(view) : view;
  }

  private static PhoneView at(String headline, PartRecord part, String small) {
    return place(PhoneView.said(headline, small), part.part().home());
  }

  private static PhoneView place(PhoneView view, Place place) {
    return view.at(place.brief(), place.kind().word());
  }

  private PhoneView shown(FitOutcome.Shown shown) {
    return at("It goes here", shown.part(), shown.sentence());
  }

  private PhoneView next(Place place) {
    String wanted =
        state()
            .bench()
            .findRightful(place)
            .map(part -> "Its part: " + part.code(state().engine()).typed() + where(part))
            .orElse(Unlisted.SENTENCE);
    return place(PhoneView.said("Next place", wanted), place)
        .and(List.of(PhoneKey.of(PhoneDeed.SKIP, "Later")));
  }

  private String where(Part part) {
    return ", " + state().getPart(part.item()).where().words() + ".";
  }

  private PhoneView judged(Verdict verdict) {
    VerdictWords words = words(verdict);
    PhoneView view =
        PhoneView.said(verdict.word(), StopWords.small(state(), verdict)).withCue(verdict.cue());
    if (verdict.cue() == Cue.ASK) {
      return view.saying(words.told());
    }
    return verdict.cue() == Cue.STOP ? view.withFacts(words.facts()) : right(view, verdict, words);
  }

  private PhoneView right(PhoneView view, Verdict verdict, VerdictWords words) {
    told =
        Optional.of(verdict)
            .filter(Verdict.RightPlace.class::isInstance)
            .map(Verdict.RightPlace.class::cast);
    Optional<Place> fitted = told.map(Verdict.RightPlace::place);
    List<String> lines = words.lines();
    PhoneView shown =
        view.at(lines.get(0), lines.size() > 1 ? lines.get(1) : "")
            .then(fitted.map(new LeftToFit(job, together)::words).orElse(""));
    return fitted
        .filter(place -> new LeftToFit(job, together).canBeTurned(place))
        .map(place -> shown.and(List.of(PhoneKey.of(PhoneDeed.TURNED, "I had it turned around"))))
        .orElse(shown);
  }

  /** Whatever was answered, the stop stands: with its facts and what leads out of it. */
  private PhoneView stopped(PhoneView answered) {
    Verdict stop = together.stop().orElseThrow();
    PhoneView view = judged(stop);
    boolean beside = answered.cue().filter(Cue.STOP::equals).isEmpty();
    WayOut way = words(stop).first();
    List<PhoneKey> ways = PhoneKey.of(way);
    String small = beside ? answered.small() : view.small();
    PhoneView led =
        ways.isEmpty()
            ? view.without().saying("On the big screen: " + way.words() + ".")
            : view.withTag(ways.get(0)).saying(small);
    return led.and(besides(stop));
  }

  private List<PhoneKey> besides(Verdict stop) {
    List<PhoneKey> keys = new ArrayList<>();
    if (together.canFitOnPurpose()) {
      boolean in = stop instanceof Verdict.FittedBut;
      keys.add(PhoneKey.of(PhoneDeed.ON_PURPOSE, in ? "Leave it" : "On purpose"));
    }
    keys.add(PhoneKey.of(PhoneDeed.PUT_AWAY, "Set it aside"));
    if (together.stopped().isPresent()) {
      keys.add(PhoneKey.of(PhoneDeed.OTHER_PLACE, "Another place"));
    }
    return keys;
  }
}
