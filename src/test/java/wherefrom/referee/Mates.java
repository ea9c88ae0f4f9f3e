package wherefrom.referee;

import wherefrom.referee.Piece.State;

/** Which individual a part goes with, and where it belongs because of it. */
final class Mates {
  private static final int NOBODY = -1;

  private Mates() {}

  /** The slot that a part belongs to now: it follows its mate where that sits elsewhere. */
  static int belongs(Scene scene, Piece piece) {
    int leader = piece.leader;
    boolean moved =
        leader >= 0
            && scene.piece(leader).sits >= 0
            && scene.piece(leader).sits != scene.motor.leader[piece.home];
    return moved
        ? scene.motor.follower(scene.motor.slot(piece.home), scene.piece(leader).sits)
        : piece.home;
  }

  /** Since when it belongs there: since ever, or since its mate sits away from its own home. */
  static int belongsSince(Scene scene, Piece piece) {
    boolean sits = piece.leader >= 0 && scene.piece(piece.leader).sits >= 0;
    return sits ? awaySince(scene.piece(piece.leader)) : 0;
  }

  private static int awaySince(Piece piece) {
    return piece.sits == piece.home ? 0 : piece.since;
  }

  /**
   * Since when a part cannot go into a slot because of the mate that it would have there; -1 where
   * it can.
   */
  static int wrongMateSince(Scene scene, Piece piece, int slot) {
    int leader = piece.leader;
    if (leader < 0) {
      return Piece.NEVER;
    }
    if (scene.piece(leader).state == State.RETIRED) {
      return scene.piece(leader).since;
    }
    int there = scene.sitting(scene.motor.leader[slot]);
    if (there == NOBODY || there == leader) {
      return Piece.NEVER;
    }
    return awaySince(scene.piece(there));
  }

  /** Whether a new part that never ran may go where another new part like it is awaited. */
  static boolean isAwaited(Scene scene, Piece piece, int slot) {
    Piece expected = scene.piece(scene.owner[slot]);
    return slot != piece.home
        && piece.isUnrun()
        && expected.isUnrun()
        && areAlike(scene.motor, scene.motor.slot(piece.home), scene.motor.slot(slot));
  }

  private static boolean areAlike(Motor motor, Slot one, Slot other) {
    boolean half = one.isUpper() == other.isUpper();
    boolean thrust = one.journal().equals(motor.thrust) == other.journal().equals(motor.thrust);
    return one.kind() == other.kind()
        && switch (one.kind().alike) {
          case NONE -> false;
          case ALL -> true;
          case SIDE -> one.isExhaust() == other.isExhaust();
          case HALF -> half;
          case THRUST -> half && thrust;
        };
  }

  /** Nothing goes into a big end or a main whose cap was fitted. */
  static boolean isUnderCap(Scene scene, int at) {
    Slot slot = scene.motor.slot(at);
    return scene.motor.slots.stream()
        .filter(it -> it.kind() == slot.kind().closedBy())
        .filter(it -> it.cylinder() == slot.cylinder())
        .filter(it -> it.cylinder() > 0 || it.journal().equals(slot.journal()))
        .anyMatch(it -> scene.fitted[it.at()] >= 0);
  }

  /** Whether what a shell lies in is away: a lower one's cap, the rod of an upper one. */
  static boolean isHolderAway(Scene scene, int at) {
    Slot slot = scene.motor.slot(at);
    Kind holder = slot.kind().heldBy(slot.isUpper());
    return scene.motor.slots.stream()
        .filter(it -> it.kind() == holder)
        .filter(it -> it.cylinder() == slot.cylinder())
        .filter(it -> it.cylinder() > 0 || it.journal().equals(slot.journal()))
        .map(it -> rightful(scene, it))
        .anyMatch(it -> it.state == State.AWAY || it.state == State.LOST);
  }

  /** Who is to sit in a slot: the mate of what its own mate is by now, else whose slot it is. */
  private static Piece rightful(Scene scene, Slot slot) {
    int leads = scene.motor.leader[slot.at()];
    int leader = leads < 0 ? NOBODY : scene.sitting(leads);
    return scene.pieces.values().stream()
        .filter(it -> leader != NOBODY && it.leader == leader)
        .filter(it -> it.kind == slot.kind() && it.state != State.RETIRED)
        .findFirst()
        .orElse(scene.piece(scene.owner[slot.at()]));
  }
}
