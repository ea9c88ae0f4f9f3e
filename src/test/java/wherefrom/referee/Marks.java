package wherefrom.referee;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import wherefrom.referee.Rulebook.Row;
import wherefrom.referee.Scene.Change;

/** Since when something is so: of what sits at a slot, of a slot's own parts, of one part. */
final class Marks {
  static final int NEVER = -1;

  private final Motor motor;
  private final int[] here;
  private final int[] own;
  private final Map<Integer, Integer> self = new HashMap<>();

  Marks(Motor motor) {
    this.motor = motor;
    this.here = new int[motor.slots.size()];
    this.own = new int[motor.slots.size()];
    Arrays.fill(here, NEVER);
    Arrays.fill(own, NEVER);
  }

  /** Marks all that a row covers; the latest counts. */
  void mark(Row row, Change cause, int since) {
    if (row.cover().equals("self")) {
      self.merge(cause.piece(), since, Math::max);
      return;
    }
    int[] marked = row.cover().equals("own") ? own : here;
    for (Slot slot : motor.slots) {
      if (row.speaksOf(slot.kind()) && Rulebook.covers(row.cover(), cause.where(), slot)) {
        marked[slot.at()] = Math.max(marked[slot.at()], since);
      }
    }
  }

  /** Since when a part is marked at a slot, of which it is then one of the own parts or not. */
  int of(Piece piece, int slot, int home) {
    return Math.max(self.getOrDefault(piece.number, NEVER), Math.max(here[slot], own[home]));
  }
}
