package wherefrom.job.puttogether;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.Unmated;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.entry.TakenBack;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.Attempt;
import wherefrom.rules.LeftStanding;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictName;

/** Judges what is in the hand, logs what comes of it, and holds a stop until it is solved. */
final class Judging {
  private final OpenJob job;
  private final Fitting fitting;
  private InHand hand = InHand.NOTHING;

  Judging(OpenJob job) {
    this.job = job;
    this.fitting = new Fitting(job);
  }

  InHand hand() {
    return hand;
  }

  void take(Part part) {
    hand = hand.with(part);
  }

  void take(Spot spot) {
    hand = hand.at(spot);
  }

  /** Lets go of what is in the hand, its stop included; what is logged stays. */
  void drop() {
    hand = InHand.NOTHING;
  }

  void chooseReason(int index) {
    hand = hand.choosing(index);
  }

  /** A stop is judged anew, for its words to be of today; it stands whatever comes of that. */
  Verdict resume(StopGiven given) {
    Optional<Part> part = job.state().findPart(given.item()).map(PartRecord::part);
    Optional<Spot> spot = Spots.find(given.spot());
    boolean turned = given.word() == VerdictName.WRONG_END;
    Verdict verdict =
        part.flatMap(held -> spot.map(at -> fitting.judge(held, at, turned)))
            .filter(Verdict::stops)
            .orElseGet(() -> new LeftStanding(given.word(), given.sentence(), part, spot));
    hand = new InHand(part, spot, turned, Optional.of(verdict), InHand.NO_REASON);
    return verdict;
  }

  /** Logs a tag that stands for no part of the job. */
  void refuse(Verdict verdict) {
    if (fitting.refuse(verdict, hand.spot())) {
      hand = hand.refusedBy(verdict);
    }
  }

  /**
   * Judges the part in the hand at its spot, and fits it where it is right. The same scan once more
   * is the same stop, and no second entry.
   *
   * @param wanted the kind that the list names
   */
  Verdict fit(boolean turned, Optional<PartKind> wanted) {
    hand = hand.heldTurned(turned);
    Attempt attempt = hand.attempt(wanted);
    Optional<Verdict> same = hand.stop().filter(stop -> stop.equals(fitting.judge(attempt)));
    return same.isPresent() ? same.get() : judged(fitting.fit(attempt));
  }

  private Verdict judged(Verdict verdict) {
    if (verdict.stops()) {
      hand = hand.stoppedBy(verdict);
    } else {
      Part part = hand.part().orElseThrow();
      Place place = hand.place();
      endAll(() -> job.state().stops().answeredBy(part.item(), place));
      drop();
    }
    return verdict;
  }

  /** A part of this job in the hand answers the tags that stood for none. */
  void answerTags() {
    endAll(() -> job.state().stops().of(0));
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

  /** Lets go of a stop that was ended elsewhere, as where its part was sent away. */
  void letGoOfEnded() {
    int item = hand.part().map(Part::item).orElse(0);
    if (hand.stop().isPresent() && job.state().stops().of(item).isEmpty()) {
      drop();
    }
  }

  /** The stopped part is put away, or its tag: nothing is in the hand, and its stop is ended. */
  void putAway() {
    int item = hand.part().map(Part::item).orElse(0);
    endAll(() -> job.state().stops().of(item));
    drop();
  }

  /** The stopped part stays in the hand, for another place. */
  void keepPart() {
    Optional<Part> held = hand.part();
    putAway();
    held.ifPresent(this::take);
  }

  /** It was not held turned after all: its stop is taken back, and it is in again, as one act. */
  Verdict notTurned() {
    hand = hand.heldTurned(false);
    Attempt attempt = hand.attempt(Optional.empty());
    return judged(
        job.asOne(
            () -> {
              job.takeBackStop();
              return fitting.fit(attempt);
            }));
  }

  /** A fit that was none is taken back: the part is in the hand again. */
  void takeBack(Verdict.RightPlace fit) {
    fitting.takeBack(fit.part());
    hand = hand.with(fit.part()).at(fit.place().spot());
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
                stop instanceof Verdict.FittedBut fitted
                    ? Optional.of(tookOutAlone(fitted.part()))
                    : makeRoom(stop));
  }

  private FitOutcome tookOutAlone(Part part) {
    job.record(new PartUnfitted(part.item(), "something stands against it"));
    drop();
    return new FitOutcome.Said("Taken out: " + part.words() + ". Its place is open.");
  }

  private Optional<FitOutcome> makeRoom(Verdict stop) {
    if (stop instanceof Verdict.PlaceTaken taken) {
      return Optional.of(tookOut(taken.fitted(), "made room for another part"));
    }
    return stop instanceof Verdict.AlreadyFitted already
        ? Optional.of(tookOut(already.part(), "moved"))
        : Optional.empty();
  }

  /** One act where the part then fits; a stop that comes instead stands for itself. */
  private FitOutcome tookOut(Part there, String reason) {
    Part part = hand.part().orElseThrow();
    return new FitOutcome.Judged(
        judged(fitting.tookOut(there, reason, part, hand.spot().orElseThrow())));
  }

  /**
   * Something is done about the stop, then the same scan is judged anew. Where it is right, both
   * are one act; another stop that comes instead is an entry of its own, as it is solved alone.
   *
   * @param wanted the kind that the list names
   */
  Verdict after(Runnable deed, Optional<PartKind> wanted) {
    InHand held = hand.heldTurned(false);
    Attempt attempt = held.attempt(wanted);
    Verdict now =
        job.asOne(
            () -> {
              deed.run();
              Verdict anew = fitting.judge(attempt);
              return anew.stops() ? anew : fitting.fit(attempt);
            });
    boolean other = now.stops() && !held.stop().equals(Optional.of(now));
    hand = held;
    return judged(other ? fitting.fit(attempt) : now);
  }

  /** What fitting the part on purpose would un-mate; empty where it is at home. */
  Optional<Unmated> findUnmated() {
    return hand.part().flatMap(held -> hand.spot().flatMap(at -> fitting.findUnmated(held, at)));
  }

  /** Whether a reason can overrule the stop, as it stands and as things are by now. */
  boolean canFitOnPurpose() {
    return hand.isStopped() && isOfToday() && fitting.canOverrule(purpose());
  }

  /** Of another kind than the list wants, or settled since: then the part is scanned again. */
  private boolean isOfToday() {
    return hand.stop()
        .filter(stop -> !(stop instanceof LeftStanding))
        .filter(stop -> stop.name() != VerdictName.WRONG_KIND)
        .isPresent();
  }

  private Attempt purpose() {
    return hand.attempt(Optional.empty());
  }

  /** Why the stop that stands cannot be overruled; empty where it can, or none stands. */
  Optional<String> findNever() {
    if (hand.stop().isEmpty() || canFitOnPurpose()) {
      return Optional.empty();
    }
    return Optional.of(
        hand.isStopped()
            ? NeverOnPurpose.words(hand.stop().orElseThrow(), purpose())
            : Prompts.NO_PART);
  }

  /** Fits the stopped part on purpose, turned where it was said to be. */
  void fitOnPurpose(String reason) {
    fitting.fitOnPurpose(purpose(), reason);
    drop();
  }
}
