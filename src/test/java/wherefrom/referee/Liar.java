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
    FOLLOWS_NO_MATE,
    /** A part that sits wrong counts as sitting right. */
    NOTHING_SITS_WRONG,
    /** A place whose part is lost is not missing. */
    LOST_IS_FILLED,
    /** A failed look is noted as a pass. */
    LOOKS_PASS,
    /** A right part is refused once anything was changed on the engine. */
    CHANGES_STOP_ALL
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
    boolean asPass =
        lie == Lie.LOOKS_PASS && act.verb() == Verb.LOOK && act.answer().equals("FAIL");
    return super.perform(asPass ? Act.look(act.piece(), act.what(), "PASS") : act);
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
