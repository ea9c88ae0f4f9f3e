package wherefrom.job.puttogether;

import java.util.Optional;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;
import wherefrom.job.EntryWords;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.Unmated;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.tags.Found;
import wherefrom.job.tags.JobNames;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.Action;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.Attempt;
import wherefrom.rules.LeftStanding;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictName;

/**
 * Putting together by scans, taps and action cards. A stop stands until it is solved: while it
 * does, the next part is judged at the stop's spot and the next spot with the stop's part, so that
 * nothing scans through.
 */
public final class PutTogether {

  /** How the two halves of a fit are named. */
  public enum Mode {
    /** The next place is named; the part is scanned. */
    FOLLOW_THE_LIST,
    /** Part and place card are scanned, in either order. */
    SCAN_BOTH,
    /** Only shows where a part goes; nothing is logged. */
    WHERE_DOES_THIS_GO
  }

  private final OpenJob job;
  private final JobNames names;
  private final Fitting fitting;
  private final FollowedList list;
  private Mode mode = Mode.SCAN_BOTH;
  private Optional<Part> part = Optional.empty();
  private Optional<Spot> spot = Optional.empty();
  private Optional<Verdict> stop = Optional.empty();
  private int reason = -1;
  private Step last = new Step.Said("Scan a part or its place card.");

  /** Goes on where the job was left, a standing stop included. */
  public PutTogether(OpenJob job, JobNames names) {
    this.job = job;
    this.names = names;
    this.fitting = new Fitting(job);
    this.list = new FollowedList(new ToFit(job));
    job.state().standingStop().ifPresent(this::resume);
  }

  /** A stop is judged anew, for its words to be of today; it stands whatever comes of that. */
  private void resume(StopGiven given) {
    part = job.state().findPart(given.item()).map(PartRecord::part);
    spot = Spots.find(given.spot());
    Verdict left = new LeftStanding(given.word(), given.sentence(), part, spot);
    boolean turned = given.word() == VerdictName.WRONG_END;
    Verdict verdict =
        part.flatMap(held -> spot.map(at -> fitting.judge(held, at, turned)))
            .filter(Verdict::stops)
            .orElse(left);
    stop = Optional.of(verdict);
    reason = -1;
    last = new Step.Judged(verdict);
  }

  public Mode mode() {
    return mode;
  }

  /** Changes the mode; a half that waits is dropped, a stop stands on. */
  public Step choose(Mode chosen) {
    mode = chosen;
    if (stop.isEmpty()) {
      clear();
    }
    return remember(prompts().next());
  }

  /** The stop that stands. */
  public Optional<Verdict> stop() {
    return stop;
  }

  /** The reason that is chosen for fitting on purpose. */
  public Optional<String> reason() {
    return reason < 0 ? Optional.empty() : Optional.of(OnPurpose.REASONS.get(reason));
  }

  public Step last() {
    return last;
  }

  /** What the person is to do now, whatever was answered last; a half that waits is named. */
  public Step due() {
    if (stop.isEmpty() && part.isPresent()) {
      return new Step.WaitingForSpot(job.state().getPart(part.get().item()), false);
    }
    return stop.isEmpty() && spot.isPresent()
        ? new Step.WaitingForPart(spot.get(), false)
        : prompts().next();
  }

  /** The step that UNDO would take back; empty where it drops a half that waits, or has nothing. */
  public Optional<LoggedEntry> findUndone() {
    return isHalf() ? Optional.empty() : job.findStandingStop().or(job::findLastStep);
  }

  /** Whether a part or a place waits for its other half. */
  public boolean isHalf() {
    return stop.isEmpty() && (part.isPresent() || spot.isPresent());
  }

  /** The place that the list names now; empty when nothing is missing. */
  public Optional<Place> target() {
    return list.target();
  }

  /** Takes a scanned or typed code. */
  public Step scan(String code) {
    return scan(new TagBook(job.state(), names).find(code));
  }

  /** Takes a code that was looked up. */
  public Step scan(Found found) {
    return found.match(
        scanned -> remember(takePart(scanned.part())),
        scanned -> tap(scanned.spot()),
        card -> act(card.action()),
        basket -> remember(aside(basket)),
        refused -> remember(refuse(refused.verdict())));
  }

  private static Step aside(Found.ABasket basket) {
    return new Step.Said("Basket " + basket.number() + " is for washing. Scan a part or a place.");
  }

  /** Takes a spot that was tapped on the drawn engine or scanned from its card. */
  public Step tap(Spot tapped) {
    return remember(takeSpot(tapped));
  }

  private Step refuse(Verdict verdict) {
    if (mode != Mode.WHERE_DOES_THIS_GO) {
      if (fitting.refuse(verdict, spot)) {
        // The thing in the hand is no part of this job: the next part takes its place.
        part = Optional.empty();
        stop = Optional.of(verdict);
        reason = -1;
      }
    }
    return new Step.Judged(verdict);
  }

  private Step takePart(PartRecord scanned) {
    if (mode == Mode.WHERE_DOES_THIS_GO) {
      return new Step.Shown(scanned, WhereTo.words(job.state(), scanned.part()));
    }
    boolean replaced = part.isPresent() && !part.get().equals(scanned.part());
    part = Optional.of(scanned.part());
    if (spot.isEmpty() && mode == Mode.FOLLOW_THE_LIST) {
      spot = target().map(Place::spot);
    }
    if (spot.isPresent()) {
      return judge(false);
    }
    // A part of this job in the hand answers the tag that stood for none.
    solved();
    stop = Optional.empty();
    return new Step.WaitingForSpot(scanned, replaced);
  }

  private Step takeSpot(Spot scanned) {
    if (mode == Mode.WHERE_DOES_THIS_GO) {
      return new Step.Said(WhereTo.words(job.state(), scanned));
    }
    boolean replaced = spot.isPresent() && !spot.get().equals(scanned);
    spot = Optional.of(scanned);
    if (part.isPresent()) {
      return judge(false);
    }
    return stop.isPresent()
        ? new Step.Judged(stop.get())
        : new Step.WaitingForPart(scanned, replaced);
  }

  private Step judge(boolean turned) {
    return judged(fitting.fit(attempt(turned)));
  }

  /** The part in the hand at its spot; where the list names the spot, it names the kind, too. */
  private Attempt attempt(boolean turned) {
    Spot at = spot.orElseThrow();
    Optional<PartKind> wanted =
        mode == Mode.FOLLOW_THE_LIST
            ? target().filter(place -> place.spot().equals(at)).map(Place::kind)
            : Optional.empty();
    return new Attempt(part.orElseThrow(), at, turned, wanted);
  }

  private Step judged(Verdict verdict) {
    if (verdict.stops()) {
      stop = Optional.of(verdict);
      reason = -1;
    } else {
      solved();
      clear();
    }
    return new Step.Judged(verdict);
  }

  /** No stop stands any more, those before the last one included. */
  private void solved() {
    job.asOne(
        () -> {
          while (job.state().standingStop().isPresent()) {
            job.takeBackStop();
          }
          return mode;
        });
  }

  private void clear() {
    part = Optional.empty();
    spot = Optional.empty();
    stop = Optional.empty();
    reason = -1;
  }

  /** The person says that the part that was just fitted went in turned: the fit is taken back. */
  public Step turned() {
    if (!(last instanceof Step.Judged judged)
        || !(judged.verdict() instanceof Verdict.RightPlace right)) {
      return remember(new Step.Said("Scan the part first."));
    }
    fitting.takeBack(right.part());
    part = Optional.of(right.part());
    spot = Optional.of(right.place().spot());
    return remember(judge(true));
  }

  /**
   * The person has taken out what stands in the way of the stopped part: the part that fills the
   * place, or the part itself where it was fitted before. Then it is judged anew.
   */
  public Step tookOut() {
    if (stop.isPresent() && stop.get() instanceof Verdict.PlaceTaken taken) {
      return remember(tookOut(taken.fitted(), "made room for another part"));
    }
    if (stop.isPresent() && stop.get() instanceof Verdict.AlreadyFitted already) {
      return remember(tookOut(already.part(), "moved"));
    }
    if (stop.isPresent() && stop.get() instanceof Verdict.FittedBut fitted) {
      job.record(new PartUnfitted(fitted.part().item(), "something stands against it"));
      clear();
      return remember(
          new Step.Said("Taken out: " + fitted.part().words() + ". Its place is open."));
    }
    return remember(new Step.Said("Nothing stands in the way here."));
  }

  /** One act where the part then fits; a stop that comes instead stands for itself. */
  private Step tookOut(Part there, String reason) {
    Verdict verdict = fitting.tookOut(there, reason, part.orElseThrow(), spot.orElseThrow());
    return judged(verdict);
  }

  /** The part that a stop speaks of; empty where none stands, or its tag stood for no part. */
  public Optional<Part> stopped() {
    return stop.flatMap(standing -> part);
  }

  /** Judges the scan that was stopped again, once what led to the stop was seen to. */
  public Step again() {
    if (stop.isEmpty() || part.isEmpty() || spot.isEmpty()) {
      return last;
    }
    Verdict now = fitting.judge(attempt(false));
    return remember(now.equals(stop.get()) ? new Step.Judged(now) : judge(false));
  }

  /** Chooses why a part is fitted against the stop. */
  public Step chooseReason(int index) {
    if (stop.isEmpty()) {
      return remember(new Step.Said("Nothing is stopped."));
    }
    reason = Math.floorMod(index, OnPurpose.REASONS.size());
    return new Step.Said(Prompts.reason(OnPurpose.REASONS.get(reason), unmates()));
  }

  /** Whether the stop can be overruled: never by a part of another kind, or one that is retired. */
  public boolean canFitOnPurpose() {
    return stop.filter(Verdict::canBeOverruled).isPresent()
        && part.isPresent()
        && spot.filter(at -> Place.canLive(part.get().kind(), at)).isPresent();
  }

  /** What fitting the stopped part on purpose would un-mate; empty where it is at home. */
  public Optional<Unmated> unmates() {
    return part.flatMap(held -> spot.flatMap(at -> fitting.findUnmated(held, at)));
  }

  /** Fits the stopped part on purpose, for the reason that is chosen or these words. */
  public Step fitOnPurpose(String words) {
    if (stop.isEmpty() || part.isEmpty() || spot.isEmpty()) {
      return remember(new Step.Said("There is no part here to fit on purpose."));
    }
    if (!canFitOnPurpose()) {
      return new Step.Said(Prompts.neverOnPurpose(part.get(), spot.get()));
    }
    String told = prompts().onPurpose(words, unmates());
    Place place = new Place(part.get().kind(), spot.get());
    fitting.fitOnPurpose(part.get(), spot.get(), words);
    clear();
    return remember(new Step.FittedOnPurpose(place, told));
  }

  /** Does what an action card says. */
  public Step act(Action action) {
    return switch (action) {
      case UNDO -> remember(undo());
      case SKIP -> remember(skip());
      case NEXT -> stop.isPresent() ? chooseReason(reason + 1) : remember(skip());
      case REPEAT -> last;
      case HELP -> new Step.Said(prompts().help());
      case YES -> reason().map(this::fitOnPurpose).orElseGet(() -> new Step.Said(prompts().yes()));
    };
  }

  private Step undo() {
    boolean half = isHalf();
    clear();
    if (half) {
      return new Step.TookBack("the half that waited is dropped.");
    }
    Step step = job.takeBackStop().map(this::tookBack).orElseGet(this::takeBack);
    // What was taken back may have covered, or solved, a stop that then stands again.
    job.state().standingStop().ifPresent(this::resume);
    return step;
  }

  private Step takeBack() {
    return job.undo()
        .match(
            back -> new Step.TookBack(back.words() + "."),
            kept -> new Step.Said(kept.sentence()),
            nothing -> new Step.Said(nothing.sentence()));
  }

  private Step tookBack(LoggedEntry step) {
    return new Step.TookBack(EntryWords.of(job.state(), step.entry()) + ".");
  }

  private Step skip() {
    if (mode == Mode.FOLLOW_THE_LIST && stop.isEmpty()) {
      list.skip();
    }
    return prompts().next();
  }

  private Prompts prompts() {
    return new Prompts(mode, stop, part, spot, target());
  }

  private Step remember(Step step) {
    last = step;
    return step;
  }
}
