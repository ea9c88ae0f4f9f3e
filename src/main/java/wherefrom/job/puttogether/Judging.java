package wherefrom.job.puttogether;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import wherefrom.engine.Spot;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.Unmated;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.entry.TakenBack;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.Attempt;
import wherefrom.rules.LeftStanding;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictName;

/** Judges what is in the hand, logs what comes of it, and holds a stop until it is solved. */
final class Judging {
  private final OpenJob job;
  private final Fitting fitting;
  private final OldStop old;
  private InHand hand = InHand.NOTHING;

  /** The part that waited for its place when the scan came that is stopped now. */
  private InHand waited = InHand.NOTHING;

  /** What went in last. */
  private InHand fitted = InHand.NOTHING;

  Judging(OpenJob job) {
    this.job = job;
    this.fitting = new Fitting(job);
    this.old = new OldStop(job, fitting);
  }

  InHand hand() {
    return hand;
  }

  /** A part whose tag was scanned, or one without a tag, as a person knows it. */
  void take(Part part, boolean untagged) {
    waited = InHand.NOTHING;
    hand = untagged ? hand.withUntagged(part) : hand.with(part);
  }

  void take(Spot spot) {
    waited = hand.isHalf() ? hand.partAlone() : InHand.NOTHING;
    hand = hand.at(spot);
  }

  /** Lets go of what is in the hand, its stop too; what is logged stays. */
  void drop() {
    hand = InHand.NOTHING;
    waited = InHand.NOTHING;
  }

  /** The scan that was stopped is taken back: the part that waited before it waits again. */
  void backToHalf() {
    InHand before = hand.stop().isPresent() ? waited : InHand.NOTHING;
    drop();
    hand = before;
  }

  void chooseReason(String why) {
    hand = hand.choosing(why);
  }

  /** A stop of before stands again. */
  Verdict resume(StopGiven given) {
    hand = old.resume(given);
    return hand.stop().orElseThrow();
  }

  /**
   * A stop that is so to this day stands again once a step was taken back. One that the fit had
   * ended, or whose cause is gone, waits: what is shown is what is so now.
   */
  void resumeLive(FitOutcome step) {
    hand = hand.equals(InHand.NOTHING) ? old.findLive(step).orElse(hand) : hand;
  }

  /** Whether a part is that of the stop of before, which stands yet: it is in the hand now. */
  boolean holdsOld(Part scanned) {
    boolean same = old.isOf(scanned, hand);
    hand = same ? hand.stoppedBy(hand.stop().orElseThrow()) : hand;
    return same;
  }

  /** Logs a tag that stands for no part of the job; nothing where places are only shown. */
  FitOutcome refuse(Verdict verdict, FitMode mode) {
    if (mode != FitMode.WHERE_DOES_THIS_GO && fitting.refuse(verdict, hand.spot())) {
      hand = hand.refusedBy(verdict);
    }
    return new FitOutcome.Judged(verdict);
  }

  /**
   * Judges the part in the hand at its spot, and fits it where it is right. The same scan once more
   * is the same stop, and no second entry.
   *
   * @param wanted the kind that is meant there
   */
  Verdict fit(boolean turned, MeantKind wanted) {
    hand = hand.heldTurned(turned);
    Attempt attempt = hand.attempt(wanted);
    Optional<Verdict> same = hand.stop().filter(stop -> stop.equals(fitting.judge(attempt)));
    return same.isPresent() ? same.get() : judged(fitting.fit(attempt));
  }

  /** A place is tried for a part that is only shown: nothing is logged. */
  FitOutcome tried(PartRecord shown, Spot spot) {
    Verdict verdict = fitting.judge(shown.part(), spot, false);
    return verdict.stops()
        ? new FitOutcome.Judged(verdict)
        : new FitOutcome.Shown(shown, "It goes here. Nothing is recorded in this mode.");
  }

  private Verdict judged(Verdict verdict) {
    if (verdict.stops()) {
      hand = hand.stoppedBy(verdict);
    } else {
      Part part = hand.part().orElseThrow();
      Place place = hand.place();
      endAll(() -> job.state().stops().answeredBy(part.item(), place, job.by().bench()));
      fitted = hand;
      drop();
    }
    return verdict;
  }

  /** A part of this job in the hand answers the tags that stood for none. */
  void answerTags() {
    endAll(() -> job.stops().of(0));
    hand = hand.withoutStop();
  }

  /** Each that is taken back may bring an earlier one of the same part back. */
  private void endAll(Supplier<List<LoggedEntry>> stops) {
    job.asOne(
        () -> {
          for (var left = stops.get(); !left.isEmpty(); left = stops.get()) {
            job.record(new TakenBack(left.get(left.size() - 1).sequence()));
          }
          return hand;
        });
  }

  /** The entry of the stop that stands here; one that waits behind it is none. */
  Optional<LoggedEntry> findOwnStop() {
    return hand.stop()
        .map(stop -> job.stops().of(hand.item()))
        .flatMap(stops -> stops.stream().reduce((earlier, later) -> later));
  }

  /** Lets go of a stop that was ended elsewhere, as where its part was sent away. */
  void letGoOfEnded() {
    if (hand.stop().isPresent() && job.stops().of(hand.item()).isEmpty()) {
      drop();
    }
  }

  /** The stopped part is put away, or its tag: nothing is in the hand, and its stop is ended. */
  void putAway() {
    int item = hand.part().map(Part::item).orElse(0);
    endAll(() -> job.stops().of(item));
    drop();
  }

  /** The stopped part stays in the hand, for another place. */
  void keepPart() {
    InHand held = hand.partAlone();
    putAway();
    hand = held;
  }

  /** It was not held turned after all: its stop is taken back, and it is in again, as one act. */
  Verdict notTurned() {
    hand = hand.heldTurned(false);
    Attempt attempt = hand.attempt(MeantKind.ANY);
    return judged(
        job.asOne(
            () -> {
              job.stops().takeBack();
              return fitting.fit(attempt);
            }));
  }

  /**
   * A fit that was none is taken back: the part is in the hand again. Where it is taken back
   * already, as by this very act whose answer was lost, nothing is.
   */
  void takeBack(Verdict.RightPlace fit) {
    if (job.state().findFittedAt(fit.part().item()).isPresent()) {
      fitting.takeBack(fit.part());
    }
    take(fit.part(), fitted.untagged() && fitted.item() == fit.part().item());
    hand = hand.at(fit.place().spot());
  }

  /**
   * What stands in the way is out, or the part itself where it sits and should not.
   *
   * @return what there is to say; empty where nothing stands in the way
   */
  Optional<FitOutcome> tookOut() {
    return hand.stop()
        .flatMap(
            stop ->
                stop.findInTheWay()
                    .map(
                        there ->
                            stop instanceof Verdict.FittedBut
                                ? tookOutAlone(there)
                                : makeRoom(there)));
  }

  private FitOutcome tookOutAlone(Part part) {
    job.inOne(() -> takeOut(part));
    drop();
    return new FitOutcome.Said("Taken out: " + part.words() + ". Its place is open.");
  }

  /** Another bench may have taken it out already. */
  private void takeOut(Part part) {
    if (job.state().findSeat(part.item()).isPresent()) {
      job.record(new PartUnfitted(part.item(), "something stands against it"));
    }
  }

  private FitOutcome makeRoom(Part there) {
    boolean itself = there.item() == hand.item();
    return tookOut(there, itself ? "moved" : "made room for another part");
  }

  /** One act where the part then fits; a stop that comes instead stands for itself. */
  private FitOutcome tookOut(Part there, String reason) {
    Attempt again = hand.heldTurned(false).attempt(MeantKind.ANY);
    return new FitOutcome.Judged(judged(fitting.tookOut(there, reason, again)));
  }

  /**
   * Something is done about the stop, then the same scan is judged anew. Where nothing stands
   * against the part any more it is in the hand again and goes in by a scan of its own: to clear it
   * and to fit it are two acts. The stop waits until then.
   *
   * @param wanted the kind that is meant there
   */
  FitOutcome after(Runnable deed, MeantKind wanted) {
    InHand held = hand.heldTurned(false);
    deed.run();
    Verdict now = fitting.judge(held.attempt(wanted));
    if (now.stops() || now instanceof Verdict.AlreadyFitted) {
      hand = held;
      boolean other = !held.stop().equals(Optional.of(now));
      return new FitOutcome.Judged(judged(other ? fitting.fit(held.attempt(wanted)) : now));
    }
    Part part = held.part().orElseThrow();
    hand = held.partAlone();
    return new FitOutcome.WaitingForSpot(job.state().getPart(part.item()), false);
  }

  /** What fitting the part on purpose would un-mate; empty where it is at home. */
  Optional<Unmated> findUnmated() {
    return hand.part().flatMap(held -> hand.spot().flatMap(at -> fitting.findUnmated(held, at)));
  }

  /** Whether a reason can overrule the stop, as it stands and as things are by now. */
  boolean canFitOnPurpose() {
    return hand.isStopped() && isOfToday() && fitting.canOverrule(hand.attempt(MeantKind.ANY));
  }

  /** Of another kind than the list wants, or settled since: then the part is scanned again. */
  private boolean isOfToday() {
    return hand.stop()
        .filter(stop -> !(stop instanceof LeftStanding))
        .filter(stop -> stop.name() != VerdictName.WRONG_KIND)
        .isPresent();
  }

  /** Why the stop that stands cannot be overruled; empty where it can, or none stands. */
  Optional<String> findNever() {
    if (hand.stop().isEmpty() || canFitOnPurpose()) {
      return Optional.empty();
    }
    return Optional.of(
        hand.isStopped()
            ? NeverOnPurpose.words(hand.stop().orElseThrow(), hand.attempt(MeantKind.ANY))
            : Prompts.NO_PART);
  }

  /** Fits the stopped part on purpose, turned where it was said to be. */
  void fitOnPurpose(String reason) {
    fitting.fitOnPurpose(hand.attempt(MeantKind.ANY), reason);
    drop();
  }
}
