package wherefrom.referee;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wherefrom.referee.Piece.State;

/** What the acts that counted have made of the engine: who sits where, and what was said of it. */
final class Scene {
  private static final int NOBODY = -1;

  /** Which lifters a cam is for. */
  private static final Map<String, Boolean> ROLLERS =
      Map.of(
          "FLAT_TO_ROLLER", true,
          "NEW_ROLLER_CAM", true,
          "NEW_FLAT_CAM", false,
          "ROLLER_TO_FLAT", false);

  /** A change, a part bought, or a finding, at a place; of one piece, or -1. */
  record Change(String what, String where, int since, int piece) {}

  final Motor motor;

  /** Whether the lifters were rollers as the engine came to the bench. */
  boolean roller;

  /** The act with which it came apart again; -1 in its first life. */
  int life = NOBODY;

  final Map<Integer, Piece> pieces = new LinkedHashMap<>();

  private final List<Piece> fresh = new ArrayList<>();

  /** Whose slot it is: the piece that came out of it, or what replaced that. */
  final int[] owner;

  final int[] fitted;
  final boolean[] leftEmpty;
  final Set<String> closed = new HashSet<>();
  final List<Change> changes = new ArrayList<>();
  final List<Change> bought = new ArrayList<>();

  final Cuts cuts = new Cuts();

  /** When a rod's or a main's housing was last machined again, or replaced. */
  private final Map<String, Integer> sound = new HashMap<>();

  /** By check and lobe: {@code lobe-lift@1EX}. */
  final Map<String, Piece.Answer> lobes = new HashMap<>();

  final Map<String, Piece.Answer> checks = new HashMap<>();

  /** Whether anybody has looked, measured or decided. */
  boolean inspected;

  /** Since when a decision is wanted on every used part; -1 where it is not. */
  int asked = Piece.NEVER;

  Scene(Motor motor) {
    this.motor = motor;
    this.roller = motor.roller;
    int count = motor.slots.size();
    this.owner = new int[count];
    this.fitted = new int[count];
    this.leftEmpty = new boolean[count];
    Arrays.fill(fitted, NOBODY);
    for (Slot slot : motor.slots) {
      owner[slot.at()] = slot.at();
      Piece piece = new Piece(slot.at(), slot.kind(), slot.at(), false, 0);
      piece.leader = motor.leader[slot.at()];
      pieces.put(slot.at(), piece);
    }
  }

  Piece piece(int number) {
    Piece piece = pieces.get(number);
    if (piece == null) {
      throw new IllegalArgumentException("no piece " + number);
    }
    return piece;
  }

  /** Who sits at a slot: fitted there, or never taken out of it. */
  int sitting(int slot) {
    if (fitted[slot] != NOBODY) {
      return fitted[slot];
    }
    return piece(owner[slot]).state == State.IN ? owner[slot] : NOBODY;
  }

  /** Takes in an act that counted, as number {@code now}. */
  void take(Act act, int now) {
    switch (act.verb()) {
      case OUT, FIND, WASHED -> piece(act.piece()).become(State.OUT, now);
      case BACK -> back(piece(act.piece()), now);
      case WASH -> piece(act.piece()).become(State.AWAY, now);
      case SEND -> send(piece(act.piece()), now);
      case LOSE -> piece(act.piece()).become(State.LOST, now);
      case FIT, ON_PURPOSE -> fit(piece(act.piece()), act, now);
      case TAKE_OUT -> takeOut(piece(act.piece()), now);
      case REPLACE -> replace(piece(act.piece()), act, now);
      default -> say(act, now);
    }
  }

  private void say(Act act, int now) {
    switch (act.verb()) {
      case CHANGE, WORK -> change(act, now);
      case CHECK -> check(act, now);
      case SLOT_UNKNOWN -> piece(act.piece()).slotUnknown = now;
      case EXCUSE -> excuse(act.slot(), now);
      case CLOSE -> closed.add(act.what());
      case REOPEN -> reopen(now);
      case LOOK, READ -> look(piece(act.piece()).looks, act.what(), act.answer(), now);
      case LOBE -> look(lobes, act.what() + "@" + motor.slot(act.slot()).spot(), act.answer(), now);
      case ASK -> asked = act.answer().equals("every") ? now : Piece.NEVER;
      case DECIDE -> decide(piece(act.piece()), act.answer(), now);
      default -> throw new IllegalArgumentException(act.verb() + " changes nothing here");
    }
  }

  private void change(Act act, int now) {
    changes.add(new Change(act.what(), act.answer(), now, NOBODY));
    cuts.take(act);
    if (act.what().equals("ROD_RESIZED")) {
      machined("R" + act.answer().substring(1), now);
    } else if (act.what().equals("LINE_HONED")) {
      motor.slots.forEach(slot -> sound.put(slot.journal().replace('R', '-'), now));
    }
  }

  /** Whether the lifters were rollers, as the cams before an act had left it. */
  boolean rollers(int before) {
    boolean rollers = roller;
    for (Change change : changes) {
      if (change.since() < before) {
        rollers = ROLLERS.getOrDefault(change.what(), rollers);
      }
    }
    return rollers;
  }

  /** Whether each part in use would have a place of its own, were it at home where it sits. */
  boolean canReopen() {
    Set<Integer> homed = new HashSet<>();
    for (Slot slot : motor.slots) {
      homed.add(sitting(slot.at()) == NOBODY ? owner[slot.at()] : sitting(slot.at()));
    }
    Set<Integer> inUse = new HashSet<>();
    pieces.values().stream().filter(it -> !it.replaced).forEach(it -> inUse.add(it.number));
    return homed.equals(inUse);
  }

  /** It ran as it is: what sits is at home, and nothing that was said of anything counts. */
  private void reopen(int now) {
    int[] seated = new int[owner.length];
    for (Slot slot : motor.slots) {
      seated[slot.at()] = sitting(slot.at());
    }
    roller = rollers(now);
    life = now;
    List<Piece> in = new ArrayList<>();
    for (Slot slot : motor.slots) {
      int at = slot.at();
      if (seated[at] != NOBODY) {
        owner[at] = seated[at];
        in.add(piece(seated[at]));
        piece(seated[at]).beginNextLife(at);
      }
    }
    pieces.values().stream().filter(it -> !in.contains(it)).forEach(it -> it.beginNextLife(NOBODY));
    for (Piece piece : pieces.values()) {
      int mate = motor.leader[piece.home];
      piece.leader = piece.isNew || mate < 0 ? NOBODY : owner[mate];
    }
    fresh.removeAll(in);
    Arrays.fill(fitted, NOBODY);
    Arrays.fill(leftEmpty, false);
    List.of(closed, changes, bought).forEach(java.util.Collection::clear);
    List.of(lobes, checks, sound).forEach(Map::clear);
    inspected = false;
    asked = Piece.NEVER;
  }

  private void check(Act act, int now) {
    checks.put(act.what(), new Piece.Answer(act.answer(), now));
    if (act.what().startsWith("R23:align-bore@R") && act.answer().equals("PASS")) {
      match(act.what().substring(act.what().indexOf('@') + 1));
    }
  }

  private void machined(String rod, int now) {
    sound.put(rod, now);
    match(rod);
  }

  /** Rod and cap of a journal were machined together: they are a pair from then on. */
  private void match(String rod) {
    for (Slot slot : motor.slots) {
      if (slot.kind() == Kind.ROD_CAP && slot.journal().equals(rod)) {
        Piece cap = piece(owner[slot.at()]);
        cap.leader = owner[motor.leader[slot.at()]];
        cap.matched = true;
      }
    }
  }

  /** Since when the housings of {@code R1} or {@code M2} are in order whatever was before. */
  int soundSince(String journal) {
    return sound.getOrDefault(journal, 0);
  }

  private void look(Map<String, Piece.Answer> looks, String check, String answer, int now) {
    looks.put(check, new Piece.Answer(answer, now));
    inspected = true;
  }

  private void decide(Piece piece, String decision, int now) {
    piece.decision = decision;
    piece.decided = now;
    inspected = true;
  }

  private static void send(Piece piece, int now) {
    piece.become(State.AWAY, now);
    piece.atShop = true;
  }

  /** What was to be machined is machined. */
  private static void back(Piece piece, int now) {
    piece.become(State.OUT, now);
    if (piece.decision.equals("MACHINE")) {
      piece.decision = "";
    }
  }

  private void takeOut(Piece piece, int now) {
    leave(piece);
    piece.become(State.OUT, now);
  }

  private void leave(Piece piece) {
    if (piece.state == State.FITTED) {
      fitted[piece.sits] = NOBODY;
    }
  }

  private void fit(Piece piece, Act act, int now) {
    int slot = act.slot();
    leave(piece);
    if (fitted[slot] != NOBODY) {
      takeOut(piece(fitted[slot]), now);
    }
    boolean onPurpose = act.verb() == Act.Verb.ON_PURPOSE;
    Piece expected = piece(owner[slot]);
    // New parts are bound to a place when they are fitted there, be it against an open check.
    if (!piece.replaced && Mates.isAwaited(this, piece, slot)) {
      exchange(piece, expected);
    }
    int turned = piece.sits == slot ? piece.turned : Piece.NEVER;
    piece.become(State.FITTED, now);
    piece.sits = slot;
    piece.turned = turned == Piece.NEVER && act.isTurned() ? now : turned;
    piece.reason = onPurpose ? now : Piece.NEVER;
    piece.ran = piece.ran == Piece.NEVER ? now : piece.ran;
    fitted[slot] = piece.number;
    leftEmpty[slot] = false;
    clampTogether();
  }

  /** New parts that are alike are of the place that they are fitted at. */
  private void exchange(Piece one, Piece other) {
    int home = one.home;
    one.home = other.home;
    other.home = home;
    owner[one.home] = one.number;
    owner[other.home] = other.number;
  }

  /** A new part goes from now on with what it was first clamped together with. */
  private void clampTogether() {
    for (Piece piece : fresh) {
      boolean alone = piece.leader == NOBODY && piece.state == State.FITTED;
      if (alone && motor.leader[piece.sits] >= 0) {
        piece.leader = sitting(motor.leader[piece.sits]);
      }
    }
  }

  private void replace(Piece old, Act act, int now) {
    int number = act.slot();
    leave(old);
    old.become(State.RETIRED, now);
    old.replaced = true;
    Piece bought = new Piece(number, old.kind, old.home, true, now);
    bought.size = size(act.what(), old);
    bought.sort = act.answer();
    pieces.put(number, bought);
    fresh.add(bought);
    owner[old.home] = number;
    String journal = motor.slot(old.home).journal();
    String what = Rulebook.REPLACED.get(old.kind);
    if (what != null) {
      this.bought.add(new Change(what, journal, now, number));
    }
    if (old.kind == Kind.ROD) {
      sound.put(journal, now);
    }
    comeTogether(journal);
  }

  private int size(String said, Piece old) {
    return switch (said) {
      case "" -> NOBODY;
      case "listed" -> cuts.of(motor.slot(old.home));
      default -> Integer.parseInt(said);
    };
  }

  /** A new rod comes with its cap: one cap, bought before either of them was fitted. */
  private void comeTogether(String rod) {
    for (Slot slot : motor.slots) {
      if (slot.kind() == Kind.ROD_CAP && slot.journal().equals(rod)) {
        Piece cap = piece(owner[slot.at()]);
        int own = owner[motor.leader[slot.at()]];
        boolean hasCap = pieces.values().stream().anyMatch(it -> it.matched && it.leader == own);
        if (cap.isUnrun() && piece(own).isUnrun() && !cap.matched && !hasCap) {
          cap.leader = own;
          cap.matched = true;
          cap.cameWithRod = true;
        }
      }
    }
  }

  /** A place is left empty; or what sits there stays as it is, for a reason. */
  private void excuse(int slot, int now) {
    int here = sitting(slot);
    if (here == NOBODY) {
      leftEmpty[slot] = true;
    } else {
      piece(here).reason = now;
    }
  }
}
