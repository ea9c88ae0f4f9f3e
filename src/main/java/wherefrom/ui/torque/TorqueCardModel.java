package wherefrom.ui.torque;

import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import wherefrom.job.OpenJob;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.torque.KeptCard;
import wherefrom.job.torque.TorqueBook;
import wherefrom.job.torque.TorqueStep;
import wherefrom.parts.Action;
import wherefrom.rules.Cue;
import wherefrom.text.Words;
import wherefrom.ui.controls.ScreenAnswer;
import wherefrom.workings.torque.Bolt;
import wherefrom.workings.torque.NextStep;
import wherefrom.workings.torque.Tick;
import wherefrom.workings.torque.TorqueAnswer;
import wherefrom.workings.torque.TorqueCard;

/** A torque card at work: the bolt in turn, who works, a question that stands. */
final class TorqueCardModel {
  /** No bolt is tightened in less: a second read of the card in this time is no second bolt. */
  static final long TWICE_NANOS = 1_500_000_000L;

  private final int number;
  private final LongSupplier nanos;
  private final TorqueBook book;
  private Optional<Long> lastCard = Optional.empty();
  private Optional<TorqueAnswer.OutOfTurn> question = Optional.empty();
  private String person;
  private Optional<CodeLookup> refused = Optional.empty();
  private String said = "";

  TorqueCardModel(OpenJob job, int number, LongSupplier nanos) {
    this.number = number;
    this.nanos = nanos;
    this.book = new TorqueBook(job);
    this.person = lastPerson();
  }

  /** The person who made the last tick, while the same round goes on. */
  private String lastPerson() {
    TorqueCard card = card();
    List<Tick> ticks = card.ticks();
    if (ticks.isEmpty()) {
      return "";
    }
    Tick last = ticks.get(ticks.size() - 1);
    boolean checks = isCheck();
    return checks == (last.stage() == card.checkStage()) ? last.person() : "";
  }

  KeptCard kept() {
    return book.find(number).orElseThrow();
  }

  TorqueCard card() {
    return kept().card();
  }

  /** Whether the card is still there: undoing elsewhere can take it away. */
  boolean isThere() {
    return book.find(number).filter(KeptCard::holds).isPresent();
  }

  /** What is tightened. */
  String title() {
    return book.find(number)
        .map(kept -> Words.capital(kept.card().spec().fastener()))
        .orElse("Torque card");
  }

  boolean isCheck() {
    return card().next() instanceof NextStep.SecondCheck;
  }

  String person() {
    return person;
  }

  void person(String name) {
    person = name.strip();
    said = "";
  }

  /** Whether a name is wanted before the next tick. */
  boolean wantsPerson() {
    return person.isEmpty() && !kept().isDone();
  }

  Optional<TorqueAnswer.OutOfTurn> question() {
    return question;
  }

  /** The bolt in turn is done. */
  Optional<Cue> done() {
    return card().findDue(person).flatMap(due -> tick(due.bolt(), false));
  }

  /** This bolt was touched: it is done. */
  Optional<Cue> tick(int bolt) {
    return tick(bolt, false);
  }

  /** The bolt that is questioned was done all the same. */
  Optional<Cue> confirm() {
    return question.flatMap(asked -> tick(asked.bolt().number(), true));
  }

  /** Back to the bolt in turn; nothing was ticked. */
  void dismiss() {
    question = Optional.empty();
    said = "";
  }

  private Optional<Cue> tick(int bolt, boolean outOfTurn) {
    boolean check = isCheck();
    TorqueStep step = book.tick(number, bolt, person, outOfTurn);
    dismiss();
    return Optional.of(step.match(done -> ticked(check), this::question, this::refused));
  }

  private Cue ticked(boolean check) {
    if (isCheck() && !check) {
      person = "";
    }
    return Cue.RIGHT;
  }

  private Cue question(TorqueStep.Questioned asked) {
    question = Optional.of(asked.question());
    return Cue.ASK;
  }

  private Cue refused(TorqueStep.Refused refused) {
    said = refused.sentence();
    return Cue.ASK;
  }

  /** Takes the question back, or the card's last tick. */
  void undo() {
    if (question.isPresent()) {
      dismiss();
      return;
    }
    boolean check = isCheck();
    TorqueStep step = book.takeBack(number);
    said =
        step.match(
            TorqueStep.Done::sentence,
            asked -> asked.question().sentence(),
            TorqueStep.Refused::sentence);
    if (check != isCheck()) {
      person = lastPerson();
    }
  }

  /** Takes a scanned code: the action cards do what the keys do. */
  Optional<Cue> scan(CodeLookup found) {
    if (found instanceof CodeLookup.AnAction action) {
      return act(action.action());
    }
    refused = Optional.of(found);
    return Optional.empty();
  }

  /** The code that no bolt can be ticked with and that is to be answered; asked once. */
  Optional<CodeLookup> takeRefused() {
    Optional<CodeLookup> found = refused;
    refused = Optional.empty();
    return found;
  }

  /** What UNDO would take back here, in few words. */
  String undoes() {
    if (question.isPresent()) {
      return "the question";
    }
    List<Tick> ticks = card().ticks();
    return ticks.isEmpty()
        ? "no bolt is ticked"
        : "bolt " + ticks.get(ticks.size() - 1).bolt() + " of this card";
  }

  private Optional<Cue> act(Action action) {
    return switch (action) {
      case NEXT -> next();
      case YES -> confirm();
      case UNDO -> {
        undo();
        yield Optional.empty();
      }
      case SKIP -> {
        said = "A card skips no bolt. Touch the bolt you did.";
        yield Optional.of(Cue.ASK);
      }
      case REPEAT, HELP -> {
        said = "Do what the card says at the lit bolt. Then NEXT.";
        yield Optional.empty();
      }
    };
  }

  private Optional<Cue> next() {
    long now = nanos.getAsLong();
    boolean twice = lastCard.isPresent() && now - lastCard.get() < TWICE_NANOS;
    lastCard = Optional.of(now);
    if (twice) {
      said = "NEXT was read twice. It counts once.";
      return Optional.empty();
    }
    return question.isPresent() ? Optional.of(Cue.ASK) : done();
  }

  /**
   * What stands in large words.
   *
   * @param brief whether there is room for what must be known now alone
   */
  ScreenAnswer answer(boolean brief) {
    return question
        .map(asked -> TorqueAnswers.outOfTurn(asked, brief))
        .orElseGet(() -> new TorqueAnswers(kept().card(), said, brief).answer());
  }

  /** What is drawn at a position, row by row from 1; empty where there is no bolt. */
  Optional<BoltFace> face(int position) {
    TorqueCard card = card();
    int columns = card.spec().pattern().columns();
    Optional<Tick> due = card.findDue("");
    return card.spec()
        .pattern()
        .findAt((position - 1) / columns, (position - 1) % columns)
        .map(bolt -> new BoltFace(Integer.toString(bolt.number()), look(card, bolt, due)));
  }

  private BoltFace.Look look(TorqueCard card, Bolt bolt, Optional<Tick> due) {
    if (question.filter(asked -> asked.bolt().number() == bolt.number()).isPresent()) {
      return BoltFace.Look.ASKED;
    }
    if (due.filter(tick -> tick.bolt() == bolt.number()).isPresent()) {
      return BoltFace.Look.TURN;
    }
    int stage = due.map(Tick::stage).orElse(card.checkStage());
    boolean done = stage == card.checkStage() ? card.isChecked(bolt) : card.isTicked(stage, bolt);
    return done ? BoltFace.Look.DONE : BoltFace.Look.OPEN;
  }

  /** The bolt at a position. */
  Optional<Integer> boltAt(int position) {
    int columns = card().spec().pattern().columns();
    return card()
        .spec()
        .pattern()
        .findAt((position - 1) / columns, (position - 1) % columns)
        .map(Bolt::number);
  }
}
