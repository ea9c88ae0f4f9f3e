package wherefrom.referee;

import java.util.ArrayList;
import java.util.List;
import wherefrom.referee.Act.Verb;
import wherefrom.referee.Piece.State;
import wherefrom.referee.Referee.Word;

/** What happened so far, act by act, as the referee has it from whoever did it. */
final class Story {
  /**
   * @param stopped a fit that was refused: nothing moved, but the stop can be taken back
   */
  private record Fact(Act act, int number, boolean stopped) {}

  private final Motor motor;
  private final List<Fact> facts = new ArrayList<>();
  private int acts;
  private int bought;
  private Scene scene;
  private Referee referee;

  Story(Motor motor) {
    this.motor = motor;
    this.bought = motor.slots.size();
    this.scene = new Scene(motor);
    this.referee = new Referee(scene);
  }

  /** The same so far, to go on in another way. */
  Story copy() {
    Story copy = new Story(motor);
    copy.facts.addAll(facts);
    copy.acts = acts;
    copy.bought = bought;
    copy.retell();
    return copy;
  }

  private void retell() {
    scene = new Scene(motor);
    facts.stream().filter(fact -> !fact.stopped()).forEach(f -> scene.take(f.act(), f.number()));
    referee = new Referee(scene);
  }

  Scene scene() {
    return scene;
  }

  Referee referee() {
    return referee;
  }

  /** The number of the next part that is bought; none is used twice. */
  int nextPiece() {
    return bought;
  }

  /** How many acts were done, those taken back and the taking back included. */
  int length() {
    return acts;
  }

  /** Whether anything is left to take back. */
  boolean hasFacts() {
    return !facts.isEmpty();
  }

  /**
   * Tells an act.
   *
   * @return whether it can be done as things stand; if not, nothing has happened
   */
  boolean tell(Act act) {
    if (!isPossible(act)) {
      return false;
    }
    acts++;
    if (act.verb() == Verb.TAKE_BACK) {
      facts.remove(facts.size() - 1);
      retell();
    } else {
      add(act);
      referee = new Referee(scene);
    }
    return true;
  }

  private void add(Act act) {
    Fact fact = fact(act);
    if (act.verb() == Verb.REPLACE) {
      bought = Math.max(bought, act.slot() + 1);
    }
    boolean nothing = fact.act().verb() == Verb.FIT && word(act) == Word.DONE;
    if (!nothing) {
      facts.add(fact);
    }
    if (!nothing && !fact.stopped()) {
      scene.take(fact.act(), acts);
    }
  }

  /**
   * Fitting on purpose where nothing speaks against it is an ordinary fit. A part that has a way
   * round counts as turned where it was said to be, whatever else spoke against it.
   */
  private Fact fact(Act act) {
    boolean fits = act.verb() == Verb.FIT || act.verb() == Verb.ON_PURPOSE;
    boolean stops = fits && word(act).stops();
    boolean plain = act.verb() == Verb.ON_PURPOSE && !stops;
    boolean turned =
        stops && act.verb() == Verb.ON_PURPOSE && act.isTurned() && referee.turns(act.piece());
    Act upright = Act.at(plain ? Verb.FIT : act.verb(), act.piece(), act.slot());
    return new Fact(fits && !turned ? upright : act, acts, act.verb() == Verb.FIT && stops);
  }

  /** What the referee says of a fit. */
  Word word(Act fit) {
    return referee.judge(fit.piece(), fit.slot(), fit.isTurned());
  }

  private boolean isPossible(Act act) {
    if (act.piece() >= 0 && !scene.pieces.containsKey(act.piece())) {
      return false;
    }
    return switch (act.verb()) {
      case OUT -> is(act, State.IN);
      case TAKE_OUT -> is(act, State.FITTED);
      case LOSE -> is(act, State.OUT) || is(act, State.AWAY);
      case FIND -> is(act, State.LOST);
      case WASH, SEND -> is(act, State.OUT);
      case WASHED -> is(act, State.AWAY) && !scene.piece(act.piece()).atShop;
      case BACK -> is(act, State.AWAY) && scene.piece(act.piece()).atShop;
      case REPLACE -> !scene.piece(act.piece()).replaced && isSizeKnown(act);
      case ON_PURPOSE -> !word(act).stops() || referee.maySay(act.piece(), act.slot());
      case DECIDE ->
          !is(act, State.RETIRED)
              && !(act.answer().equals("REUSE") && referee.isBanned(act.piece()))
              && (!act.answer().equals("MACHINE") || scene.piece(act.piece()).kind.isWorked());
      case CHECK -> referee.checks().containsKey(act.what());
      case CLOSE -> referee.canClose(act.what());
      case TAKE_BACK -> hasFacts();
      case REOPEN -> scene.canReopen();
      case ASK -> act.answer().equals("every") == scene.asked < 0;
      case CHANGE -> isChangePossible(act);
      case EXCUSE -> referee.mayStay(act.slot());
      case FIT, WORK, LOOK, READ, LOBE, SLOT_UNKNOWN -> true;
    };
  }

  /** The buying list gives a size only where somebody said to what the surface was cut. */
  private boolean isSizeKnown(Act act) {
    Slot slot = motor.slot(scene.piece(act.piece()).home);
    return !act.what().equals("listed") || scene.cuts.isCut(slot) && scene.cuts.of(slot) >= 0;
  }

  private boolean isChangePossible(Act act) {
    return switch (act.what()) {
      case "FLAT_TO_ROLLER" -> !scene.rollers(acts + 1);
      case "ROLLER_TO_FLAT" -> scene.rollers(acts + 1);
      default -> true;
    };
  }

  private boolean is(Act act, State state) {
    return scene.piece(act.piece()).state == state;
  }
}
