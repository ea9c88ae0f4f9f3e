package wherefrom.ui.puttogether;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import wherefrom.engine.Section;
import wherefrom.engine.Spot;
import wherefrom.job.EngineJob;
import wherefrom.job.Handled;
import wherefrom.job.Handling;
import wherefrom.job.JobNames;
import wherefrom.job.LogbookException;
import wherefrom.job.OnPurpose;
import wherefrom.job.OpenJob;
import wherefrom.job.PlaceState;
import wherefrom.job.PutTogether;
import wherefrom.job.Step;
import wherefrom.job.StillMissing;
import wherefrom.parts.Action;
import wherefrom.parts.Orientation;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;
import wherefrom.rules.Cue;
import wherefrom.rules.Cycle;
import wherefrom.rules.Verdict;

/** What the screen for putting together shows and does. */
final class PutTogetherModel {

  /** A section of the engine with its open places. */
  record SectionLine(Section section, List<Place> open, boolean closed) {
    SectionLine {
      open = List.copyOf(open);
    }
  }

  /** The reasons to leave a place empty; the last one wants words of the person's own. */
  static final List<String> EXCUSES =
      List.of("not in this engine", "fitted at the machine shop", "comes later", "other");

  private final OpenJob job;
  private final PutTogether together;
  private final StillMissing missing;
  private Answer answer;
  private Optional<Verdict> right = Optional.empty();
  private PartKind kind;
  private String trouble = "";

  PutTogetherModel(OpenJob job, JobNames names) {
    this.job = job;
    this.together = new PutTogether(job, names);
    this.missing = new StillMissing(job);
    this.kind =
        together
            .target()
            .map(Place::kind)
            .orElseGet(() -> job.state().kinds().stream().sorted().findFirst().orElseThrow());
    this.answer = Answers.of(job.state(), together.last());
    answer.kind().ifPresent(shown -> kind = shown);
  }

  EngineJob state() {
    return job.state();
  }

  PutTogether.Mode mode() {
    return together.mode();
  }

  /** What stands on the screen. */
  Answer answer() {
    return answer;
  }

  /** The stop that stands; nothing scans through while one does. */
  Optional<Verdict> stop() {
    return together.stop();
  }

  Optional<String> reason() {
    return together.reason();
  }

  /** What went wrong with the last deed, in a sentence; empty when nothing did. */
  String trouble() {
    return trouble;
  }

  /** The kind of part that the drawn engine shows. */
  PartKind kind() {
    return kind;
  }

  void show(PartKind shown) {
    kind = shown;
  }

  /** What is so at a spot for the kind that is shown; empty where none of the kind lives. */
  Optional<PlaceState> stateAt(Spot spot) {
    return Place.canLive(kind, spot) && isTracked(new Place(kind, spot))
        ? Optional.of(job.state().state(new Place(kind, spot)))
        : Optional.empty();
  }

  private boolean isTracked(Place place) {
    return job.state().places().contains(place);
  }

  Optional<Cue> choose(PutTogether.Mode mode) {
    if (stop().isEmpty()) {
      answer = Answer.said("", "");
    }
    return take(() -> together.choose(mode));
  }

  /** Takes a scanned or typed code and says what to sound. */
  Optional<Cue> scan(String digits) {
    return take(() -> together.scan(digits));
  }

  Optional<Cue> tap(Spot spot) {
    return take(() -> together.tap(spot));
  }

  Optional<Cue> act(Action action) {
    return take(() -> together.act(action));
  }

  /** A tag was in view and could not be read, or several were. */
  Optional<Cue> ask(String hint) {
    if (stop().isPresent()) {
      return Optional.empty();
    }
    return take(() -> new Step.Judged(new Verdict.Unreadable(hint)));
  }

  Optional<Cue> turned() {
    return take(together::turned);
  }

  Optional<Cue> tookOut() {
    return take(together::tookOut);
  }

  /** Whether what stands in the way of the stop can be taken out. */
  boolean canTakeOut() {
    return stop()
        .filter(
            verdict ->
                verdict instanceof Verdict.PlaceTaken || verdict instanceof Verdict.AlreadyFitted)
        .isPresent();
  }

  /** Whether the part that was just fitted could be in turned. */
  boolean canBeTurned() {
    return right
        .filter(Verdict.RightPlace.class::isInstance)
        .map(verdict -> ((Verdict.RightPlace) verdict).part().kind())
        .filter(fitted -> Places.orientation(state().layout(), fitted) != Orientation.NONE)
        .isPresent();
  }

  /** Whether the stop can be overruled: never by a part of another kind, or by none. */
  boolean canFitOnPurpose() {
    return stop()
        .filter(
            verdict ->
                !(verdict instanceof Verdict.OtherEngine
                    || verdict instanceof Verdict.WrongKind
                    || isOlderTag(verdict)))
        .isPresent();
  }

  private boolean isOlderTag(Verdict verdict) {
    return verdict instanceof Verdict.Retired
        && state().standingStop().filter(given -> given.item() == 0).isPresent();
  }

  void chooseReason(String chosen) {
    int index = OnPurpose.REASONS.indexOf(chosen);
    Step step = together.chooseReason(index);
    if (step instanceof Step.Said said) {
      trouble = said.sentence();
    }
  }

  Optional<Cue> fitOnPurpose(String reason) {
    return take(() -> together.fitOnPurpose(reason));
  }

  private Optional<Cue> take(Supplier<Step> deed) {
    try {
      trouble = "";
      Step step = deed.get();
      right =
          step instanceof Step.Judged judged && judged.verdict().cue() == Cue.RIGHT
              ? Optional.of(judged.verdict())
              : Optional.empty();
      return show(step);
    } catch (LogbookException | IllegalArgumentException e) {
      trouble = String.valueOf(e.getMessage());
      return Optional.of(Cue.ASK);
    }
  }

  private Optional<Cue> show(Step step) {
    Answer next = Answers.of(state(), step);
    // A foreign code and plain words leave the card of a waiting half as it stands.
    boolean words = next.headline().isEmpty() || isForeign(step);
    if (stop().isPresent() && next.cue().filter(Cue.STOP::equals).isEmpty()) {
      trouble = (next.headline() + " " + next.small()).strip();
      return next.cue();
    }
    if (words && !answer.headline().isEmpty()) {
      trouble = isForeign(step) ? next.lines().get(0) + " " + next.small() : next.small();
      return isForeign(step) ? Optional.of(Cue.ASK) : Optional.empty();
    }
    answer = next;
    next.kind().ifPresent(shown -> kind = shown);
    return next.cue();
  }

  private static boolean isForeign(Step step) {
    return step instanceof Step.Judged judged
        && judged.verdict() instanceof Verdict.NotOneOfOurs foreign
        && !foreign.ourForm();
  }

  /** How many places are open. */
  int missing() {
    return missing.places().size();
  }

  /** Every section that has a tracked place, with what is open in it. */
  List<SectionLine> sections() {
    return missing.sections().stream()
        .map(
            section ->
                new SectionLine(
                    section,
                    missing.places(section),
                    state().closedSections().contains(section.key())))
        .toList();
  }

  /** Closes a section; says why not while a place in it is open. */
  void close(Section section) {
    attempt(
        () ->
            missing.close(section)
                ? ""
                : "Not closed: " + missing.places(section).size() + " still missing.");
  }

  void excuse(Place place, String reason) {
    attempt(
        () -> {
          missing.excuse(place, reason);
          return "";
        });
  }

  /** The part of a place is replaced by a new one; its item number, whose tag can be printed. */
  Optional<Integer> replace(Place place, String reason) {
    Optional<Integer> owner = state().findOwner(place).map(part -> part.item());
    int[] fresh = {0};
    owner.ifPresent(
        item ->
            attempt(
                () -> {
                  Handled done = new Handling(job).replace(item, reason);
                  if (done instanceof Handled.Logged logged) {
                    fresh[0] = logged.part().part().item();
                    return "";
                  }
                  return ((Handled.Refused) done).sentence();
                }));
    return fresh[0] == 0 ? Optional.empty() : Optional.of(fresh[0]);
  }

  /** The shortest way out of what sits in each other's places. */
  List<Cycle> cycles() {
    return Cycle.of(state().fitted());
  }

  /** The person has taken this part out again, as the way out says. */
  void takeOut(Cycle.Move move) {
    attempt(
        () -> {
          Handled done = new Handling(job).tookOut(move.part().item(), "put right");
          return done instanceof Handled.Refused refused ? refused.sentence() : "";
        });
  }

  private void attempt(Supplier<String> deed) {
    try {
      trouble = deed.get();
    } catch (LogbookException | IllegalArgumentException e) {
      trouble = String.valueOf(e.getMessage());
    }
  }
}
