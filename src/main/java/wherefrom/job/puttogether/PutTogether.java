package wherefrom.job.puttogether;

import java.util.Optional;
import java.util.function.Supplier;
import wherefrom.engine.Spot;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.Unmated;
import wherefrom.job.UnsentException;
import wherefrom.job.tags.CodeLookup;
import wherefrom.parts.Action;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.Verdict;

/**
 * Putting together by scans, taps and action cards. While a stop stands, the next part is judged at
 * its spot and the next spot with its part, so that nothing scans through.
 */
public final class PutTogether {

  private final OpenJob job;
  private final Judging judging;
  private final FollowedList list;
  private final ScannedHalves halves;
  private FitMode mode = FitMode.SCAN_BOTH;

  /** Whether a part was right until the person said that it is in turned. */
  private boolean saidTurned;

  private FitOutcome last = new FitOutcome.Said("Scan a part or its place card.");

  /** Goes on where the job was left, a standing stop included. */
  public PutTogether(OpenJob job) {
    this.job = job;
    this.judging = new Judging(job);
    this.list = new FollowedList(new ToFit(job));
    this.halves = new ScannedHalves(job, judging, list);
    resumeWaiting();
  }

  public FitMode mode() {
    return mode;
  }

  /** Changes the mode; a half that waits is dropped, a stop stands on. */
  public FitOutcome choose(FitMode chosen) {
    mode = chosen;
    if (hand().stop().isEmpty()) {
      judging.drop();
    }
    return remember(prompts().next());
  }

  public Optional<Verdict> stop() {
    return hand().stop();
  }

  public Optional<String> reason() {
    return hand().findReason();
  }

  public FitOutcome last() {
    return last;
  }

  /** What is to be done now, whatever was answered last; a half that waits is named. */
  public FitOutcome due() {
    return prompts().due(job.state());
  }

  /** The step that UNDO would take back; empty where it drops a half that waits, or has nothing. */
  public Optional<LoggedEntry> findUndone() {
    return isHalf() ? Optional.empty() : judging.findOwnStop().or(job::findLastStep);
  }

  /** Whether the stop that stands came up again by itself. */
  public boolean isOldStop() {
    return hand().old();
  }

  /** Whether a part or a place waits for its other half. */
  public boolean isHalf() {
    return hand().isHalf();
  }

  /** Whether the part in the hand has no tag, and is what a person says. */
  public boolean isUntagged() {
    return hand().untagged();
  }

  /** The place that the list names now; empty when nothing is missing. */
  public Optional<Place> target() {
    return list.target();
  }

  /** Takes a code that was looked up. */
  public FitOutcome scan(CodeLookup found) {
    return found.match(
        scanned -> press(() -> halves.take(mode, scanned.part())),
        scanned -> tap(scanned.spot()),
        card -> act(card.action()),
        basket -> remember(prompts().aside(basket)),
        bag -> remember(prompts().aside(bag, job.state())),
        bigPart -> remember(prompts().aside(bigPart)),
        refused -> press(() -> judging.refuse(refused.verdict(), mode)));
  }

  /** Takes a part whose tag is gone, and that a person knows all the same. */
  public FitOutcome takeUntagged(Part known) {
    return press(() -> halves.takeUntagged(mode, job.state().getPart(known.item())));
  }

  /** Takes a spot that was scanned from its card. */
  public FitOutcome tap(Spot tapped) {
    halves.point(Optional.empty());
    return press(() -> halves.take(mode, tapped, last));
  }

  /** Takes a place that was tapped on the drawn engine: no part of another kind is meant there. */
  public FitOutcome tap(Place tapped) {
    halves.point(Optional.of(tapped));
    return press(() -> halves.take(mode, tapped.spot(), last));
  }

  /** The part that was just fitted went in turned, says the person: the fit is taken back. */
  public FitOutcome turned() {
    if (!(last instanceof FitOutcome.Judged judged)
        || !(judged.verdict() instanceof Verdict.RightPlace right)) {
      return remember(new FitOutcome.Said("Scan the part first."));
    }
    FitOutcome stopped = press(() -> halves.turned(mode, right));
    saidTurned = true;
    return stopped;
  }

  /** A part that is recorded as fitted is in the hand: that is put right, and it waits. */
  public FitOutcome hold(Part part) {
    return press(() -> halves.hold(part));
  }

  /** The stopped part is laid away; nothing was fitted. */
  public FitOutcome putAway() {
    return press(
        () -> {
          judging.putAway();
          return new FitOutcome.Said("The part is put away. Nothing was fitted.");
        });
  }

  /** The stopped part stays in the hand, and another place is to be named. */
  public FitOutcome otherPlace() {
    return press(
        () -> {
          judging.keepPart();
          return prompts().due(job.state());
        });
  }

  /** What fills the place, or the part where it was fitted before, was taken out: judged anew. */
  public FitOutcome tookOut() {
    return press(
        () ->
            judging
                .tookOut()
                .orElseGet(() -> new FitOutcome.Said("Nothing stands in the way here.")));
  }

  /** The part that a stop speaks of; empty where none stands, or its tag stood for no part. */
  public Optional<Part> stopped() {
    return hand().stop().flatMap(standing -> hand().part());
  }

  /** Does something about the stop and judges its scan again. */
  public FitOutcome after(Runnable deed) {
    if (hand().isStopped()) {
      return press(() -> judging.after(deed, halves.wanted(mode)));
    }
    deed.run();
    return last;
  }

  /** Chooses why a part is fitted against the stop: one of the reasons, or a person's own words. */
  public FitOutcome chooseReason(String reason) {
    FitOutcome chosen = new Overruling(judging, prompts()).choose(reason);
    return hand().stop().isEmpty() ? remember(chosen) : chosen;
  }

  /** Whether a reason can overrule the stop; {@link NeverOnPurpose} has those that none can. */
  public boolean canFitOnPurpose() {
    return judging.canFitOnPurpose();
  }

  /** What fitting the stopped part on purpose would un-mate; empty where it is at home. */
  public Optional<Unmated> unmates() {
    return judging.findUnmated();
  }

  /** Fits the stopped part on purpose, for the reason that is chosen or these words. */
  public FitOutcome fitOnPurpose(String words) {
    boolean never = hand().isStopped() && !canFitOnPurpose();
    FitOutcome fitted = new Overruling(judging, prompts()).fit(words);
    return never ? fitted : remember(fitted);
  }

  /** Does what an action card says. None chooses a reason or fits against a stop. */
  public FitOutcome act(Action action) {
    return switch (action) {
      case UNDO -> remember(undo());
      case SKIP -> remember(skip());
      case NEXT -> stop().isPresent() ? new FitOutcome.Said(prompts().yes()) : remember(skip());
      case REPEAT -> last;
      case HELP -> new FitOutcome.Said(prompts().help());
      case YES -> new FitOutcome.Said(prompts().yes());
    };
  }

  private FitOutcome undo() {
    if (isHalf()) {
      judging.drop();
      return new FitOutcome.TookBack(Optional.empty(), "the half that waited is dropped", "");
    }
    if (saidTurned) {
      return new FitOutcome.Judged(judging.notTurned());
    }
    FitOutcome step = PlaceNow.takeBack(job, judging.findOwnStop());
    // A stop is let go of only once it is taken back in the logbook, and may have covered another.
    judging.backToHalf();
    judging.resumeLive(step);
    return step;
  }

  /** A stop that waits stands again, unless something is in the hand. */
  public void resumeWaiting() {
    if (hand().equals(InHand.NOTHING)) {
      job.stops()
          .findWaiting()
          .ifPresent(given -> last = new FitOutcome.Judged(judging.resume(given)));
    }
  }

  /** A stop that came up again by itself waits: nobody is at its place, to answer it by a scan. */
  public void layStopAside() {
    if (hand().stop().isPresent()) {
      judging.drop();
      remember(prompts().next());
    }
  }

  /** No reason is chosen any more: the person looked at something else. */
  public void dropReason() {
    judging.chooseReason(InHand.NO_REASON);
  }

  /** Lets go of a stop that was ended elsewhere. */
  public void letGoOfEnded() {
    judging.letGoOfEnded();
  }

  /** How many stops wait that are not of what is in the hand. */
  public int waiting() {
    return hand().countOthers(job);
  }

  private FitOutcome skip() {
    dropReason();
    if (mode == FitMode.FOLLOW_THE_LIST && hand().stop().isEmpty()) {
      list.skip();
    }
    return prompts().next();
  }

  private InHand hand() {
    return judging.hand();
  }

  private Prompts prompts() {
    return new Prompts(mode, hand(), target(), list.countHeld(), judging.findNever());
  }

  /**
   * A press that may be done again: what it wrote before it was cut off stands, and is not written
   * again; what is left of it is.
   */
  private FitOutcome press(Supplier<FitOutcome> deed) {
    try {
      return remember(deed.get());
    } catch (UnsentException e) {
      e.goOn();
      throw e;
    }
  }

  private FitOutcome remember(FitOutcome step) {
    last = step;
    saidTurned = false;
    return step;
  }
}
