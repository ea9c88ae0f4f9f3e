package wherefrom.referee;

import java.util.HashMap;
import java.util.Map;

/** One individual part, as the acts have left it. Acts are numbered from 1; 0 is before all. */
final class Piece {
  static final int NOWHERE = -1;
  static final int NEVER = -1;

  enum State {
    IN,
    OUT,
    AWAY,
    LOST,
    FITTED,
    RETIRED
  }

  record Answer(String look, int since) {}

  final int number;
  final Kind kind;
  boolean isNew;
  int takenOn;
  int home;
  State state;

  /** The act that brought it into its state, and the slot where it sits. */
  int since;

  int sits = NOWHERE;

  /** When it was fitted the first time. */
  int ran = NEVER;

  /** When a reason was given for it to sit where it sits. */
  int reason = NEVER;

  /** When it was fitted turned, knowing it. */
  int turned = NEVER;

  /** The individual that it goes with; -1 where that is not settled yet, or it goes by place. */
  int leader = NOWHERE;

  /** Of a cap: whether it was machined with that one, or bought together with it. */
  boolean matched;

  /** Of a cap: whether it was bought together with its rod, and needs no machining. */
  boolean cameWithRod;

  /** Of a new part: how many thousandths of an inch from standard; -1 where nobody said. */
  int size = NOWHERE;

  String sort = "";

  /** Whether another was bought in its place. */
  boolean replaced;

  boolean atShop;
  String decision = "";
  int decided;
  int slotUnknown = NEVER;
  final Map<String, Answer> looks = new HashMap<>();

  Piece(int number, Kind kind, int home, boolean isNew, int takenOn) {
    this.number = number;
    this.kind = kind;
    this.home = home;
    this.isNew = isNew;
    this.takenOn = takenOn;
    this.state = isNew ? State.OUT : State.IN;
    this.since = takenOn;
    this.sits = isNew ? NOWHERE : home;
  }

  void become(State now, int act) {
    state = now;
    since = act;
    sits = NOWHERE;
    reason = NEVER;
    turned = NEVER;
    atShop = false;
  }

  /** The engine comes apart again; {@code slot} is where it sat, -1 where it was not in. */
  void beginNextLife(int slot) {
    if (slot >= 0) {
      become(State.IN, 0);
      isNew = false;
      takenOn = 0;
      home = slot;
      sits = slot;
      ran = NEVER;
    }
    leader = NOWHERE;
    matched = false;
    cameWithRod = false;
    decision = "";
    decided = 0;
    slotUnknown = NEVER;
    looks.clear();
  }

  /** New, and nobody has put it into the engine yet. */
  boolean isUnrun() {
    return isNew && ran == NEVER;
  }
}
