package wherefrom.referee;

import java.util.Set;
import java.util.TreeSet;
import wherefrom.engine.Layout;
import wherefrom.referee.Act.Verb;
import wherefrom.referee.Referee.Word;

/** The program with a fault in it, to see that the referee notices. */
final class Liar extends Program {
  enum Lie {
    /** A part that follows its mate to another place is sent home instead. */
    FOLLOWS_NO_MATE(1_000),
    /** A part that sits wrong counts as sitting right. */
    NOTHING_SITS_WRONG(1_000),
    /** A place whose part is lost is not missing. */
    LOST_IS_FILLED(1_000),
    /** A failed look is noted as a pass. */
    LOOKS_PASS(1_000),
    /** A reading outside its limit is noted as one within. */
    READINGS_PASS(1_000),
    /** What the machine shop cut to a size counts as cut to one that nobody said. */
    SHOP_SIZES_UNSAID(4_000),
    /** A part that was replaced is let in again for a reason. */
    RETIRED_COMES_BACK(1_000),
    /** A part that must be new is let in for a reason, where another stop is said first. */
    REASON_FOR_WHAT_MUST_BE_NEW(4_000),
    /** A part that is fitted turned, knowing it, counts as fitted. */
    TURNED_IS_FITTED(4_000),
    /** A right part is refused once anything was changed on the engine. */
    CHANGES_STOP_ALL(1_000);

    /** In how many histories it must be found; few speak of sizes. */
    final int within;

    Lie(int within) {
      this.within = within;
    }
  }

  private final Lie lie;
  private final Motor motor;
  private boolean changed;

  Liar(Motor motor, Layout layout, Lie lie) {
    super(motor, layout);
    this.motor = motor;
    this.lie = lie;
  }

  private Liar(Liar other) {
    super(other);
    this.motor = other.motor;
    this.lie = other.lie;
    this.changed = other.changed;
  }

  @Override
  Program copy() {
    return new Liar(this);
  }

  @Override
  boolean perform(Act act) {
    changed |= act.verb() == Verb.CHANGE;
    return super.perform(twisted(act)) || act.verb() == Verb.ON_PURPOSE && pretends(act);
  }

  /** A fit on purpose that was refused is said to be done. */
  private boolean pretends(Act act) {
    return switch (judge(act.piece(), act.slot(), act.isTurned())) {
      case RETIRED -> lie == Lie.RETIRED_COMES_BACK;
      case OTHER_PLACE, WRONG_MATE, PLACE_TAKEN -> lie == Lie.REASON_FOR_WHAT_MUST_BE_NEW;
      default -> false;
    };
  }

  private Act twisted(Act act) {
    boolean failed = act.answer().equals("FAIL");
    if (lie == Lie.LOOKS_PASS && act.verb() == Verb.LOOK && failed) {
      return Act.look(act.piece(), act.what(), "PASS");
    }
    if (lie == Lie.READINGS_PASS && act.verb() == Verb.READ && failed) {
      return Act.read(act.piece(), act.what(), "PASS");
    }
    if (lie == Lie.TURNED_IS_FITTED && act.verb() == Verb.ON_PURPOSE) {
      return Act.at(Verb.ON_PURPOSE, act.piece(), act.slot());
    }
    return lie == Lie.SHOP_SIZES_UNSAID && act.verb() == Verb.WORK ? act.cutTo(-1, true) : act;
  }

  @Override
  Word judge(int piece, int slot, boolean turned) {
    Word word = super.judge(piece, slot, turned);
    boolean follows = word == Word.RIGHT && piece < motor.slots.size() && piece != slot;
    if (lie == Lie.FOLLOWS_NO_MATE && follows) {
      return Word.OTHER_PLACE;
    }
    if (lie == Lie.CHANGES_STOP_ALL && changed && word == Word.RIGHT) {
      return Word.NOT_CLEARED;
    }
    return lie == Lie.NOTHING_SITS_WRONG && word == Word.FITTED_BUT ? Word.DONE : word;
  }

  @Override
  Set<Integer> missing() {
    Set<Integer> missing = new TreeSet<>(super.missing());
    if (lie == Lie.LOST_IS_FILLED) {
      missing.removeIf(slot -> super.judge(slot, slot, false) == Word.NOT_CLEARED);
    }
    return missing;
  }
}
