package wherefrom.ui.puttogether;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import wherefrom.job.EngineJob;
import wherefrom.job.LogbookException;
import wherefrom.job.OpenJob;
import wherefrom.job.decide.Deciding;
import wherefrom.job.puttogether.FitMode;
import wherefrom.job.puttogether.FitOutcome;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.tags.CodeLookup;
import wherefrom.parts.Action;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.Cue;
import wherefrom.rules.Verdict;
import wherefrom.ui.controls.ScreenAnswer;

/** What the screen for putting together shows and does. */
final class PutTogetherModel {
  private final OpenJob job;
  private final PutTogether together;
  private final int undecided;
  private final Telling telling;
  private final WantedPart wanted = new WantedPart();
  private Optional<Place> tapped = Optional.empty();
  private PartKind kind;
  private String trouble = "";
  private Optional<Function<PutTogether, FitOutcome>> unkept = Optional.empty();

  PutTogetherModel(OpenJob job) {
    this.job = job;
    this.together = new PutTogether(job);
    this.kind = together.target().map(Place::kind).orElseGet(() -> Answers.firstKind(job.state()));
    ScreenAnswer first = Answers.of(job.state(), together.last());
    first.kind().ifPresent(shown -> kind = shown);
    undecided = new Deciding(job).listUndecided().size();
    ScreenAnswer start =
        stop().isPresent() ? first : Answers.start(undecided, first, together.target());
    telling = new Telling(job, this::due, start);
  }

  EngineJob state() {
    return job.state();
  }

  FitMode mode() {
    return together.mode();
  }

  /** What stands on the screen; once a reason is chosen, what would come of it. */
  ScreenAnswer answer() {
    return stop()
        .flatMap(stopped -> reason())
        .flatMap(words -> together.unmates())
        .map(unmated -> Answers.onPurpose(telling.last(), unmated))
        .orElseGet(() -> telling.standing().answer());
  }

  /** The stop that stands; nothing scans through while one does. */
  Optional<Verdict> stop() {
    return together.stop();
  }

  /** The reason that is chosen for fitting on purpose. */
  Optional<String> reason() {
    return together.reason();
  }

  /** What went wrong with the last deed, in a sentence; empty when nothing did. */
  String trouble() {
    return trouble;
  }

  /** What could not be written while a stop stands, and is to be done again; empty else. */
  Optional<Function<PutTogether, FitOutcome>> unkept() {
    return unkept;
  }

  /** The kind of part that the drawn engine shows. */
  PartKind kind() {
    return kind;
  }

  /** How many parts waited for a decision as the screen came up; empty once it says more. */
  Optional<Integer> decisionsWait() {
    return Optional.of(undecided).filter(many -> telling.isAtStart() && stop().isEmpty());
  }

  /** The mode that is on already changes nothing; another one says which part it lets go. */
  Optional<Cue> choose(FitMode mode) {
    if (mode == mode() && together.isHalf()) {
      return Optional.empty();
    }
    Optional<Place> held = dueHalves().held().map(Part::home);
    wanted.drop();
    if (stop().isEmpty()) {
      telling.say(ScreenAnswer.nothing());
    }
    Optional<Cue> cue = take(() -> together.choose(mode));
    return held.isPresent() ? letGo(held) : cue;
  }

  /** A part was named by a tap: its tag is asked for. */
  void askFor(Part part) {
    wanted.ask(part);
    telling.say(due());
  }

  /** The part that was named by a tap, whose tag is asked for; empty for none. */
  Optional<Part> wanted() {
    return wanted.find();
  }

  /** Takes a scanned or typed code and says what to sound. */
  Optional<Cue> scan(CodeLookup found) {
    return found instanceof CodeLookup.AnAction card
        ? act(card.action())
        : take(() -> together.scan(found));
  }

  Optional<Cue> tap(Place place) {
    tapped = Optional.of(place);
    return take(() -> together.tap(place));
  }

  /**
   * The screen comes up again: what was ended elsewhere stands here no more, and a stop that was
   * given elsewhere since stands before all that was said here.
   */
  void shown() {
    boolean stopped = stop().isPresent();
    dropReason();
    together.letGoOfEnded();
    if (telling.isStoppedSince()) {
      together.resumeWaiting();
    }
    if (stopped != stop().isPresent()) {
      telling.say(due());
    }
  }

  Optional<Cue> act(Action action) {
    return take(() -> together.act(action));
  }

  /** A stop that came up again by itself waits: what is scanned next is no answer to it. */
  void layStopAside() {
    if (stop().isPresent()) {
      together.layStopAside();
      telling.say(due());
    }
  }

  /** The person looked at something else: a reason is chosen anew. */
  void dropReason() {
    together.dropReason();
  }

  /**
   * The camera sees a tag that it cannot read, or several. A stop stands on; what waited comes back
   * when the camera asks no more.
   *
   * @param hint what would help; empty when that is over
   */
  Optional<Cue> ask(String hint) {
    if (hint.isEmpty() || stop().isPresent()) {
      telling.asksNoMore();
      return Optional.empty();
    }
    telling.ask(hint);
    return Optional.of(Cue.ASK);
  }

  /** The part in the hand that is recorded as fitted, or was just said to be; empty for none. */
  Optional<Part> recordedAsIn() {
    return right().map(RightModel::alreadyIn).orElseGet(() -> dueHalves().recordedAsIn(state()));
  }

  /** That part is in the hand: its place is empty, or something else sits there. */
  Optional<Cue> hold() {
    Optional<Place> was = recordedAsIn().flatMap(part -> state().findFittedAt(part.item()));
    Optional<Cue> cue = recordedAsIn().flatMap(part -> take(() -> together.hold(part)));
    trouble = trouble.isEmpty() ? was.map(Answers::emptied).orElse("") : trouble;
    return cue;
  }

  /** Does something with what is in the hand, fitted last or stopped. */
  Optional<Cue> leave(Function<PutTogether, FitOutcome> way) {
    return take(() -> way.apply(together));
  }

  /** The deeds that lead out of the stop that stands. */
  StopModel stopped() {
    return new StopModel(job, together);
  }

  /** Chooses one of the reasons, or words of the person's own. */
  void chooseReason(String chosen) {
    together.chooseReason(chosen);
    trouble = "";
  }

  /** Fits the stopped part on purpose, for the reason that is chosen. */
  Optional<Cue> fitOnPurpose() {
    return reason().flatMap(words -> take(() -> together.fitOnPurpose(words)));
  }

  /** The right place has been seen: what is due now stands again. */
  void moveOn() {
    together.resumeWaiting();
    telling.say(due());
    telling.last().kind().ifPresent(shown -> kind = shown);
  }

  /** The right place that stands until the next scan, as long as its part sits there. */
  Optional<RightModel> right() {
    return telling
        .standing()
        .right()
        .flatMap(
            verdict ->
                Marked.of(verdict)
                    .place()
                    .map(place -> new RightModel(job, together, verdict, place)));
  }

  /** The place that is ringed. */
  Optional<Place> here() {
    ToldFit told = telling.standing();
    return told.onPurpose().or(() -> dueHalves().here(told.answer(), mode()));
  }

  /** The halves of what is due, whatever else is told beside it. */
  Halves dueHalves() {
    return wanted.halves(state(), together.due()).orElseGet(() -> Halves.of(job, together, tapped));
  }

  /** The halves of what is due, where nothing else is to be told; empty beside an answer. */
  Optional<Halves> halves() {
    ScreenAnswer answer = telling.standing().answer();
    boolean idle = answer.equals(due()) || answer.equals(ScreenAnswer.nothing());
    return idle && answer.cue().isEmpty() ? Optional.of(dueHalves()) : Optional.empty();
  }

  private Optional<Cue> take(Supplier<FitOutcome> deed) {
    try {
      trouble = "";
      unkept = Optional.empty();
      telling.asksNoMore();
      Optional<Place> held = dueHalves().here(telling.standing().answer(), mode());
      FitOutcome step = deed.get();
      wanted.after(step, mode());
      Optional<Cue> cue = show(step);
      return step instanceof FitOutcome.WaitingForSpot now && now.replaced() ? letGo(held) : cue;
    } catch (LogbookException | IllegalArgumentException e) {
      String why = LogbookException.sentence(e);
      if (stop().isPresent()) {
        trouble = why;
        unkept = e instanceof LogbookException ? Optional.of(it -> deed.get()) : unkept;
      } else {
        telling.say(ScreenAnswer.notKept(why));
      }
      return Optional.of(Cue.ASK);
    }
  }

  /** Another part is in the hand now: the screen stays as it is, and says which was let go. */
  private Optional<Cue> letGo(Optional<Place> held) {
    telling.say(due());
    trouble = held.map(place -> Answers.letGo(state(), place)).orElse("");
    return Optional.of(Cue.ASK);
  }

  /** What is to be done now, as it would stand on the screen by itself. */
  private ScreenAnswer due() {
    return Answers.of(state(), together.due());
  }

  private Optional<Cue> show(FitOutcome step) {
    ScreenAnswer next = Answers.of(state(), step);
    if (stop().isPresent() && next.cue().filter(Cue.STOP::equals).isEmpty()) {
      telling.say(Answers.of(state(), new FitOutcome.Judged(stop().orElseThrow())));
      trouble = Answers.inLine(step, next);
      return next.cue();
    }
    telling.say(step, next, mode());
    next.kind().ifPresent(shown -> kind = shown);
    return next.cue().or(() -> dueHalves().warns() ? Optional.of(Cue.ASK) : Optional.empty());
  }

  /** What UNDO takes back here. */
  UndoneHere undone() {
    return new UndoneHere(state(), together);
  }
}
