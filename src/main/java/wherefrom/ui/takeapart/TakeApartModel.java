package wherefrom.ui.takeapart;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import wherefrom.engine.Spot;
import wherefrom.job.Caution;
import wherefrom.job.EngineJob;
import wherefrom.job.JobPartNames;
import wherefrom.job.LogbookException;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.PlaceState;
import wherefrom.job.handling.Handled;
import wherefrom.job.handling.Handling;
import wherefrom.job.tags.Found;
import wherefrom.job.tags.JobNames;
import wherefrom.job.tags.TagBook;
import wherefrom.job.takeapart.TakeApart;
import wherefrom.parts.Action;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.Cue;
import wherefrom.rules.Verdict;
import wherefrom.ui.controls.Answer;

/** What the screen for taking apart shows and does. */
final class TakeApartModel {
  private final OpenJob job;
  private final JobNames names;
  private final TakeApart apart;
  private final Set<Integer> skipped = new HashSet<>();
  private Optional<Integer> inHand = Optional.empty();
  private Optional<PartRecord> asked = Optional.empty();
  private Answer answer;

  TakeApartModel(OpenJob job, JobNames names) {
    this.job = job;
    this.names = names;
    this.apart = new TakeApart(job, names);
    this.answer = next("");
  }

  private EngineJob state() {
    return job.state();
  }

  Answer answer() {
    return answer;
  }

  /** The part that is to come out next; skipped ones come last. */
  Optional<PartRecord> next() {
    List<PartRecord> inside = TakeApart.listInside(state());
    return inside.stream()
        .filter(part -> !skipped.contains(part.part().item()))
        .findFirst()
        .or(() -> inside.stream().findFirst());
  }

  /** The part that notes and photographs are about: the one that came out last, or the next. */
  Optional<Part> subject() {
    return inHand.flatMap(state()::findPart).or(this::next).map(PartRecord::part);
  }

  /** The kind of part that the drawn engine shows. */
  PartKind kind() {
    return next()
        .map(part -> part.part().kind())
        .orElseGet(() -> state().kinds().stream().sorted().findFirst().orElseThrow());
  }

  /** What is so at a spot for the kind that is shown; empty where none of the kind lives. */
  Optional<PlaceState> stateAt(Spot spot) {
    PartKind kind = kind();
    return Place.canLive(kind, spot) && state().places().contains(new Place(kind, spot))
        ? Optional.of(state().state(new Place(kind, spot)))
        : Optional.empty();
  }

  /** {@code 12 of 74 out}. */
  String progress() {
    long inside =
        state().parts().stream().filter(part -> part.where() == Whereabouts.IN_ENGINE).count();
    int places = state().places().size();
    return places - inside + " of " + places + " out";
  }

  /** What can hurt a person or spoil a part at this step, each with its source. */
  List<Caution> cautions() {
    return next().map(part -> Caution.atStage(part.part().kind().stage())).orElseGet(List::of);
  }

  /** Takes a scanned or typed code and says what to sound. */
  Optional<Cue> scan(String code) {
    Found found = new TagBook(state(), names).find(code);
    return found instanceof Found.AnAction action ? act(action.action()) : out(code);
  }

  /**
   * The part of the shown kind at this spot is out. One that is not the next is asked about first:
   * a finger may have come down beside the place that is lit.
   */
  Optional<Cue> tap(Spot spot) {
    return state()
        .findOwner(new Place(kind(), spot))
        .map(part -> state().getPart(part.item()))
        .flatMap(part -> isOutOfTurn(part) ? question(part) : out(part));
  }

  private boolean isOutOfTurn(PartRecord part) {
    return part.where() == Whereabouts.IN_ENGINE && !next().equals(Optional.of(part));
  }

  private Optional<Cue> question(PartRecord part) {
    asked = Optional.of(part);
    String name = name(part.part());
    String next = next().map(record -> name(record.part())).orElse("");
    answer =
        new Answer(
            Optional.of(Cue.ASK),
            "Is it out?",
            List.of(name),
            "Next out is " + next + ". Is the " + name + " out all the same?",
            Optional.of(part.part().kind()),
            Set.of(part.part().home().spot()));
    return answer.cue();
  }

  /** The part that was tapped out of turn; empty when none is asked about. */
  Optional<PartRecord> asked() {
    return asked;
  }

  /** What the key says that logs the part that is asked about. */
  String askedWords() {
    return asked.map(part -> name(part.part()) + " is out").orElse("");
  }

  /** The part that is asked about is out. */
  Optional<Cue> confirm() {
    return asked.flatMap(this::out);
  }

  /** It was the wrong place: nothing is logged. */
  void dismiss() {
    answer = next("");
  }

  private static String name(Part part) {
    return part.home().figures() + " " + part.kind().word();
  }

  private Optional<Cue> out(PartRecord part) {
    return out(part.part().code(state().engine()).digits());
  }

  private Optional<Cue> out(String code) {
    try {
      return came(apart.out(code));
    } catch (LogbookException e) {
      asked = Optional.empty();
      answer = Answer.notKept(String.valueOf(e.getMessage()));
      return answer.cue();
    }
  }

  private Optional<Cue> came(TakeApart.Answer came) {
    asked = Optional.empty();
    return came.match(this::out, this::alreadyOut, this::refused, this::noPart);
  }

  private Optional<Cue> out(TakeApart.Answer.CameOut out) {
    Part part = out.part().part();
    inHand = Optional.of(part.item());
    answer = next("Out: " + part.words() + ".");
    return Optional.of(Cue.RIGHT);
  }

  private Optional<Cue> alreadyOut(TakeApart.Answer.AlreadyOut already) {
    Part part = already.part().part();
    inHand = Optional.of(part.item());
    answer = next("Already out: " + part.words() + " is " + already.part().where().words() + ".");
    return Optional.empty();
  }

  private Optional<Cue> refused(TakeApart.Answer.Refused refused) {
    Verdict verdict = refused.verdict();
    answer =
        new Answer(
            Optional.of(verdict.cue()),
            verdict.word(),
            List.of(),
            verdict.words(new JobPartNames(job.state())).told(),
            Optional.empty(),
            Set.of());
    return Optional.of(verdict.cue());
  }

  private Optional<Cue> noPart(TakeApart.Answer.NoPart other) {
    answer = next("Scan the tag of the part that comes out; a card or a basket is not needed yet.");
    return Optional.empty();
  }

  Optional<Cue> act(Action action) {
    switch (action) {
      case UNDO -> undo();
      case SKIP, NEXT -> skip();
      case HELP ->
          answer = next("Take the part out, hang its tag on it, scan the tag. Or tap its place.");
      case REPEAT -> answer = next("");
      case YES -> {
        return yes();
      }
    }
    return Optional.empty();
  }

  private Optional<Cue> yes() {
    if (asked.isPresent()) {
      return confirm();
    }
    answer = next("There is nothing to say yes to.");
    return Optional.empty();
  }

  private void undo() {
    String said = job.undo().sentence();
    inHand = Optional.empty();
    answer = next(said);
  }

  /** Leaves the next part for later. */
  void skip() {
    next().ifPresent(part -> skipped.add(part.part().item()));
    if (state().parts().stream()
        .filter(part -> part.where() == Whereabouts.IN_ENGINE)
        .allMatch(part -> skipped.contains(part.part().item()))) {
      skipped.clear();
    }
    answer = next("");
  }

  /**
   * The camera sees a tag that it cannot read, or several.
   *
   * @param hint what would help; empty when that is over
   */
  Optional<Cue> ask(String hint) {
    answer = next("");
    if (!hint.isEmpty()) {
      answer = Answer.notRead(hint, "");
    }
    return answer.cue();
  }

  /** The job has changed elsewhere. */
  void refresh() {
    answer = next("");
  }

  /** Writes a note on the part in hand; what went wrong, or nothing. */
  String note(String text) {
    return handle(item -> new Handling(job).note(item, text));
  }

  String pieces(String typed) {
    int count = typed.isEmpty() ? 0 : Integer.parseInt(typed);
    return handle(item -> new Handling(job).pieces(item, count));
  }

  private String handle(IntFunction<Handled> deed) {
    Supplier<String> none = () -> "There is no part left to say it of.";
    return subject()
        .map(part -> deed.apply(part.item()))
        .map(done -> done instanceof Handled.Refused refused ? refused.sentence() : "")
        .orElseGet(none);
  }

  private Answer next(String before) {
    asked = Optional.empty();
    String lead = before.isEmpty() ? "" : before + " ";
    return next()
        .map(record -> next(record.part(), lead))
        .orElseGet(() -> Answer.said("Everything is out", lead + "Nothing is left to take out."));
  }

  private Answer next(Part part, String lead) {
    return new Answer(
        Optional.empty(),
        "Next out, tag " + part.code(state().engine()).typed(),
        List.of(name(part)),
        (lead + StepWords.mark(state().layout(), part, !lead.isEmpty())).strip(),
        Optional.of(part.kind()),
        Set.of(part.home().spot()));
  }

  /** The first caution, and how many more there are; empty when there is none. */
  String cautionWords() {
    return StepWords.caution(cautions());
  }
}
