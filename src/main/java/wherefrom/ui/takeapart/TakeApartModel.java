package wherefrom.ui.takeapart;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import wherefrom.job.Caution;
import wherefrom.job.EngineJob;
import wherefrom.job.JobPartNames;
import wherefrom.job.LogbookException;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.takeapart.NextOut;
import wherefrom.job.takeapart.OffFirst;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.job.takeapart.TakeApart;
import wherefrom.parts.Action;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.Cue;
import wherefrom.rules.Verdict;
import wherefrom.ui.controls.ScreenAnswer;

/** What the screen for taking apart shows and does. */
final class TakeApartModel {
  private final OpenJob job;
  private final TakeApart apart;
  private final Supplier<OutOrder> order;
  private final Set<Integer> later = new HashSet<>();
  private Optional<Integer> out = Optional.empty();
  private boolean again;
  private final InTheWay inTheWay = new InTheWay();
  private String said = "";

  /**
   * @param order in which parts are proposed, as it is set now
   */
  TakeApartModel(OpenJob job, Supplier<OutOrder> order) {
    this.job = job;
    this.order = order;
    this.apart = new TakeApart(job);
  }

  private EngineJob state() {
    return job.state();
  }

  /** Empty when all are out. */
  Optional<PartRecord> next() {
    return new NextOut(state(), order.get(), later).find();
  }

  /** Where the next part sits. */
  Optional<Place> here() {
    return next().map(record -> record.part().home());
  }

  /** The part that came out last and has its panel; empty before the first, and after UNDO. */
  Optional<PartRecord> out() {
    return out.flatMap(state()::findPart);
  }

  /** That it came out, or that it was out before; empty before the first. */
  Optional<String> outWords() {
    return out().map(part -> (again ? "ALREADY OUT " : "OUT ") + name(part.part()).words());
  }

  /** What takes the place of all else: a question, a verdict; empty in the run of the work. */
  Optional<ScreenAnswer> answer() {
    return inTheWay.answer();
  }

  /** The part that was tapped and is asked about; nothing while the camera asks for something. */
  Optional<OutOfTurn> doubt() {
    return inTheWay.doubt();
  }

  /** What is to be said in the place of messages, once; may be empty. */
  String takeSaid() {
    String words = said;
    said = "";
    return words;
  }

  /** The part that keys are about: the one in the panel, else the next. */
  Optional<Part> subject() {
    return out().or(this::next).map(PartRecord::part);
  }

  /** {@code 12 of 74 out}. */
  String progress() {
    return StepWords.progress(state());
  }

  PartName name(Part part) {
    return PartName.of(state().layout(), part);
  }

  /** What can hurt a person or spoil a part at this step, each with its source. */
  List<Caution> cautions() {
    return next().map(part -> Caution.atStage(part.part().kind().stage())).orElseGet(List::of);
  }

  /** The same while a big part comes off. */
  List<Caution> cautions(BigPartRecord lead) {
    BigPartKind kind = lead.part().name().kind();
    return next()
        .map(part -> Caution.atStage(part.part().kind().stage(), kind))
        .orElseGet(() -> Caution.of(kind));
  }

  /** Takes a scanned or typed code and says what to sound. */
  Optional<Cue> scan(CodeLookup found) {
    if (found instanceof CodeLookup.AnAction action) {
      return act(action.action());
    }
    Optional<OutOfTurn> asked = doubt();
    Optional<Cue> cue = keep(() -> came(apart.out(found)));
    asked.ifPresent(this::dropped);
    return cue;
  }

  /** A scan answers for itself: what was asked before is dropped, and that is said. */
  private void dropped(OutOfTurn asked) {
    PartRecord now = state().getPart(asked.part().part().item());
    if (isOutOfTurn(now)) {
      said = ("Not noted as out: " + name(now.part()).words() + ". " + said).strip();
    }
  }

  Optional<Cue> nextIsOut() {
    return next().flatMap(this::out);
  }

  /**
   * A place was tapped: its part is out. One that is not the next is asked about first, as a finger
   * may have come down beside it; what is still over it is named.
   */
  Optional<Cue> tap(Place place) {
    return state()
        .findOwner(place)
        .map(part -> state().getPart(part.item()))
        .flatMap(part -> isOutOfTurn(part) ? question(part) : out(part));
  }

  private boolean isOutOfTurn(PartRecord part) {
    return part.where() == Whereabouts.IN_ENGINE && !next().equals(Optional.of(part));
  }

  private Optional<Cue> question(PartRecord part) {
    List<PartRecord> over = new OffFirst(state()).over(part.part().home());
    ScreenAnswer asked = StepWords.outOfTurn(state().layout(), part, over, next());
    inTheWay.ask(asked, Optional.of(new OutOfTurn(part, over)));
    return asked.cue();
  }

  /** The part that is asked about is out, and what was over it too. */
  Optional<Cue> confirm() {
    return doubt().flatMap(asked -> keep(() -> came(apart.out(asked.over(), asked.part()))));
  }

  /** What stands in the way was read, or is withdrawn; what a hint covered stands again. */
  void dismiss() {
    inTheWay.dismiss();
  }

  /** Something else has come off since the last part came out. */
  void leave() {
    out = Optional.empty();
  }

  private Optional<Cue> out(PartRecord part) {
    return keep(() -> came(apart.out(part)));
  }

  private Optional<Cue> keep(Supplier<Optional<Cue>> deed) {
    inTheWay.clear();
    try {
      return deed.get();
    } catch (LogbookException e) {
      ScreenAnswer failed = ScreenAnswer.notKept(LogbookException.sentence(e));
      inTheWay.ask(failed, Optional.empty());
      return failed.cue();
    }
  }

  private Optional<Cue> came(TakeApart.Answer came) {
    return came.match(
        this::cameOut,
        this::alreadyOut,
        this::fittedOrLost,
        refused -> refused(refused.verdict()),
        other -> noPart());
  }

  private Optional<Cue> cameOut(TakeApart.Answer.CameOut done) {
    Part part = done.part().part();
    out = Optional.of(part.item());
    again = false;
    said = StepWords.too(state(), part.home());
    return Optional.of(Cue.RIGHT);
  }

  private Optional<Cue> alreadyOut(TakeApart.Answer.AlreadyOut already) {
    Part part = already.part().part();
    out = Optional.of(part.item());
    again = true;
    said = "Already out: " + name(part).words() + " is " + already.part().where().words() + ".";
    return Optional.empty();
  }

  private Optional<Cue> fittedOrLost(TakeApart.Answer.FittedOrLost other) {
    out = Optional.empty();
    ScreenAnswer asked = StepWords.fittedOrLost(name(other.part().part()), other.part().where());
    inTheWay.ask(asked, Optional.empty());
    return asked.cue();
  }

  private Optional<Cue> noPart() {
    said = "Scan the tag of a part. Cards and baskets come later.";
    return Optional.empty();
  }

  private Optional<Cue> refused(Verdict verdict) {
    out = Optional.empty();
    inTheWay.ask(
        new ScreenAnswer(
            Optional.of(verdict.cue()),
            verdict.word(),
            List.of(),
            verdict.words(new JobPartNames(job.state())).told(),
            Optional.empty(),
            Set.of()),
        Optional.empty());
    return Optional.of(verdict.cue());
  }

  /** Whether a card answers what is asked, or is about the parts; the others work the keys. */
  boolean takes(Action card) {
    return switch (card) {
      case UNDO -> true;
      case SKIP -> next().isPresent();
      case YES, REPEAT -> answer().isPresent();
      case NEXT, HELP -> false;
    };
  }

  Optional<Cue> act(Action action) {
    switch (action) {
      case UNDO -> undo();
      case SKIP -> skip();
      case NEXT, HELP, REPEAT -> dismiss();
      case YES -> {
        return yes();
      }
    }
    return Optional.empty();
  }

  private Optional<Cue> yes() {
    if (doubt().isPresent()) {
      return confirm();
    }
    dismiss();
    return Optional.empty();
  }

  private void undo() {
    inTheWay.clear();
    said = job.undo().sentence();
    out = out.filter(item -> state().getPart(item).where() != Whereabouts.IN_ENGINE);
  }

  /** Leaves the next part for later. */
  void skip() {
    inTheWay.clear();
    out = Optional.empty();
    next().ifPresent(part -> later.add(part.part().item()));
    if (TakeApart.listInside(state()).stream()
        .allMatch(part -> later.contains(part.part().item()))) {
      later.clear();
    }
  }

  /**
   * The camera sees a tag that it cannot read, or several. A question or a verdict comes back when
   * it asks no more.
   *
   * @param wanted what would help; empty when that is over
   */
  Optional<Cue> ask(String wanted) {
    return inTheWay.cover(
        wanted.isEmpty() ? Optional.empty() : Optional.of(ScreenAnswer.notRead(wanted, "")));
  }
}
