package wherefrom.referee;

import java.util.ArrayList;
import java.util.List;
import wherefrom.referee.Piece.State;
import wherefrom.referee.Scene.Change;

/** What the rules act on: changes made, parts bought, findings, and caps of another housing. */
final class Causes {
  private final Scene scene;
  private final List<Change> all = new ArrayList<>();

  private Causes(Scene scene) {
    this.scene = scene;
  }

  static List<Change> of(Scene scene) {
    Causes causes = new Causes(scene);
    causes.all.addAll(scene.changes);
    scene.bought.stream().filter(causes::binds).forEach(causes.all::add);
    scene.pieces.values().forEach(causes::findings);
    scene.pieces.values().forEach(causes::cap);
    scene.lobes.forEach(causes::lobe);
    return causes.all;
  }

  /** Buying a part asks for nothing until somebody has begun to look; a new rod always does. */
  private boolean binds(Change change) {
    boolean otherCam = scene.changes.stream().anyMatch(it -> Rulebook.CAMS.contains(it.what()));
    return change.what().equals("ROD_REPLACED")
        || scene.inspected && !(otherCam && change.what().equals("LIFTER_REPLACED"));
  }

  private void findings(Piece piece) {
    String where = scene.motor.slot(piece.home).journal();
    piece.looks.forEach((check, answer) -> finding(check, answer, where, piece.number));
    if (piece.slotUnknown != Piece.NEVER) {
      String slot = scene.motor.slot(piece.home).key();
      all.add(new Change("SLOT_UNKNOWN", slot, piece.slotUnknown, piece.number));
    }
  }

  private void finding(String check, Piece.Answer answer, String where, int piece) {
    String what = Rulebook.FINDINGS.get(check);
    if (what != null && answer.look().equals("FAIL")) {
      add(new Change(what, where, answer.since(), piece));
    }
  }

  private void lobe(String checkAtSpot, Piece.Answer answer) {
    String[] parts = checkAtSpot.split("@");
    finding(parts[0], answer, parts[1], -1);
  }

  private void cap(Piece piece) {
    if (!piece.kind.isCap()) {
      return;
    }
    String where = scene.motor.slot(piece.home).journal();
    if (piece.state == State.LOST && piece.since > scene.life) {
      add(new Change("CAP_LOST", where, piece.since, piece.number));
    }
    boolean isOfNow = piece.isNew && piece.takenOn > scene.life;
    if (isOfNow && !piece.replaced && !piece.cameWithRod) {
      add(new Change("CAP_REPLACED", where, piece.takenOn, piece.number));
    }
  }

  /**
   * A housing that was machined again, or replaced, is in order whatever its cap was before; and
   * the cap of a rod that was replaced says nothing of the new one.
   */
  private void add(Change change) {
    boolean ofCap = change.what().startsWith("CAP_");
    boolean ofOldRod = change.what().equals("CAP_LOST") && hasNoRod(scene.piece(change.piece()));
    if (!ofCap || !ofOldRod && change.since() > scene.soundSince(change.where())) {
      all.add(change);
    }
  }

  private boolean hasNoRod(Piece cap) {
    return cap.leader >= 0 && scene.piece(cap.leader).state == State.RETIRED;
  }
}
