package wherefrom.referee;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import wherefrom.referee.Piece.State;
import wherefrom.referee.Rulebook.Row;
import wherefrom.referee.Scene.Change;

/** Judges a scene: what stands against each part in each slot. */
final class Referee {
  /** What may be said of a part at a slot. */
  enum Word {
    RETIRED,
    WRONG_KIND,
    WRONG_HALF,
    DONE,
    FITTED_BUT,
    FITTED_ELSEWHERE,
    PLACE_TAKEN,
    OTHER_PLACE,
    WRONG_MATE,
    MUST_BE_NEW,
    NOT_CLEARED,
    WRONG_END,
    RIGHT;

    boolean stops() {
      return this != RIGHT && this != DONE;
    }
  }

  /**
   * @param since the act that it follows from; 0 where it was always so
   */
  private record Objection(Word word, int since) {}

  private static final int NONE = -1;

  private final Scene scene;
  private final Motor motor;

  /** What renews parts that have worn in, or that are not of the size or the sort. */
  private final Marks worn;

  private final Marks size;
  private final Marks sort;
  private final Marks flat;
  private final Marks roller;

  /** The checks that parts wait for, and the work without which they cannot be used. */
  private final Marks waits;

  private final Marks work;

  /** The causes of that work, and of refusals that a machinist can lift. */
  private final Marks workBy;

  private final Marks refused;
  private final Marks refusedBy;
  private final Map<String, Boolean> openKeys = new LinkedHashMap<>();

  Referee(Scene scene) {
    this.scene = scene;
    this.motor = scene.motor;
    this.worn = new Marks(motor);
    this.size = new Marks(motor);
    this.sort = new Marks(motor);
    this.flat = new Marks(motor);
    this.roller = new Marks(motor);
    this.waits = new Marks(motor);
    this.work = new Marks(motor);
    this.workBy = new Marks(motor);
    this.refused = new Marks(motor);
    this.refusedBy = new Marks(motor);
    for (Change cause : Causes.of(scene)) {
      for (Row row : Rulebook.ROWS) {
        if (row.changes().contains(cause.what()) && isAbout(row, cause)) {
          apply(row, cause);
        }
      }
    }
  }

  /** Whether a row has anything to speak of here. */
  private boolean isAbout(Row row, Change cause) {
    boolean self = row.cover().equals("self");
    return row.isFor(scene.rollers(cause.since()))
        && (self
            ? row.speaksOf(scene.piece(cause.piece()).kind)
            : motor.slots.stream().anyMatch(slot -> row.speaksOf(slot.kind())));
  }

  private void apply(Row row, Change cause) {
    switch (row.does()) {
      case "wear" -> worn.mark(row, cause, cause.since());
      case "size" -> size.mark(row, cause, cause.since());
      case "sort" -> sort.mark(row, cause, cause.since());
      case "flat" -> flat.mark(row, cause, cause.since());
      case "roller" -> roller.mark(row, cause, cause.since());
      case "refuse" -> forbid(row, cause, refused, refusedBy);
      case "forbid" -> forbid(row, cause, work, workBy);
      default -> waits.mark(row, cause, openSince(row, cause));
    }
  }

  private void forbid(Row row, Change cause, Marks since, Marks by) {
    int open = openSince(row, cause);
    if (open != NONE) {
      since.mark(row, cause, open);
      by.mark(row, cause, cause.since());
    }
  }

  /** Since when a check is open: since its cause, or since it was failed; -1 once it is passed. */
  private int openSince(Row row, Change cause) {
    String key = row.key(cause.where());
    Piece.Answer answer = scene.checks.get(key);
    boolean answered = answer != null && answer.since() > cause.since();
    boolean open = !answered || !answer.look().equals("PASS");
    openKeys.merge(key, open, Boolean::logicalOr);
    return open ? answered ? answer.since() : cause.since() : NONE;
  }

  /** The checks that stand, and whether each is open. */
  Map<String, Boolean> checks() {
    return openKeys;
  }

  /** What is to be said of a part that is held at a slot, or lies there in the engine. */
  Word judge(int number, int slot, boolean turned) {
    Piece piece = scene.piece(number);
    if (piece.state == State.RETIRED) {
      return Word.RETIRED;
    } else if (!motor.canLive(piece.kind, motor.slot(slot))) {
      return Word.WRONG_KIND;
    }
    if (piece.kind.isShell() && motor.slot(piece.home).isUpper() != motor.slot(slot).isUpper()) {
      return Word.WRONG_HALF;
    }
    if (piece.state == State.FITTED) {
      return piece.sits != slot
          ? Word.FITTED_ELSEWHERE
          : isObjectedTo(piece) ? Word.FITTED_BUT : Word.DONE;
    }
    if (scene.fitted[slot] >= 0) {
      return Word.PLACE_TAKEN;
    }
    List<Objection> objections = objections(piece, slot);
    return !objections.isEmpty()
        ? objections.get(0).word()
        : Mates.isUnderCap(scene, slot) || Mates.isHolderAway(scene, slot)
            ? Word.NOT_CLEARED
            : turned && turns(number) ? Word.WRONG_END : Word.RIGHT;
  }

  /** Whether a piece has a way round. */
  boolean turns(int number) {
    Kind kind = scene.piece(number).kind;
    return kind.turns || kind == Kind.LIFTER && scene.roller;
  }

  /** What stands against a part in a slot of its kind, in the order in which it is said. */
  private List<Objection> objections(Piece piece, int slot) {
    List<Objection> found = new ArrayList<>(3);
    boolean awaited = Mates.isAwaited(scene, piece, slot);
    int home = awaited ? slot : piece.home;
    if (!awaited && slot != Mates.belongs(scene, piece)) {
      add(found, Word.OTHER_PLACE, Mates.belongsSince(scene, piece));
    }
    add(found, Word.WRONG_MATE, Mates.wrongMateSince(scene, piece, slot));
    add(found, Word.MUST_BE_NEW, bannedSince(piece, slot, home));
    add(found, Word.NOT_CLEARED, notClearedSince(piece, slot, home));
    add(found, Word.WRONG_END, piece.sits == slot ? piece.turned : NONE);
    return found;
  }

  private static void add(List<Objection> found, Word word, int since) {
    if (since != NONE) {
      found.add(new Objection(word, since));
    }
  }

  /** A used part is banned by any; a new one by wear once it ran, by size and sort if older. */
  private int bannedSince(Piece piece, int slot, int home) {
    int worn = this.worn.of(piece, slot, home);
    int refused = this.refused.of(piece, slot, home);
    boolean knownRefused = hasRunBefore(piece, refusedBy.of(piece, slot, home));
    int sort = sortSince(piece, "?", this.sort.of(piece, slot, home));
    int flat = sortSince(piece, "flat", this.flat.of(piece, slot, home));
    int roller = sortSince(piece, "roller", this.roller.of(piece, slot, home));
    int size = this.size.of(piece, slot, home);
    int since =
        Math.max(hasRunBefore(piece, worn) ? worn : NONE, Math.max(sort, Math.max(flat, roller)));
    since = Math.max(since, knownRefused ? refused : NONE);
    since = Math.max(since, isOfBefore(piece, slot, size) ? size : NONE);
    return isOfWrongSize(piece, slot) ? Math.max(since, piece.takenOn) : since;
  }

  private static int sortSince(Piece piece, String wanted, int since) {
    boolean old = piece.takenOn <= since && !piece.sort.equals(wanted);
    return !piece.isNew || old ? since : NONE;
  }

  private static boolean hasRunBefore(Piece piece, int act) {
    return !piece.isNew || piece.ran != Piece.NEVER && piece.ran < act;
  }

  /** What asks for another size hits a used part, and a new one of before that is not of it. */
  private boolean isOfBefore(Piece piece, int slot, int act) {
    return !piece.isNew || piece.takenOn <= act && !isOfSize(piece, slot);
  }

  private boolean isOfSize(Piece piece, int slot) {
    return piece.size >= 0 && piece.size == scene.cuts.of(motor.slot(slot));
  }

  private boolean isOfWrongSize(Piece piece, int slot) {
    int cut = scene.cuts.of(motor.slot(slot));
    return piece.size >= 0 && scene.cuts.isCut(motor.slot(slot)) && cut >= 0 && piece.size != cut;
  }

  private int notClearedSince(Piece piece, int slot, int home) {
    boolean away = piece.state == State.AWAY || piece.state == State.LOST;
    int since = Math.max(away ? piece.since : NONE, workSince(piece, slot, home));
    return Math.max(since, Math.max(decisionSince(piece), waits.of(piece, slot, home)));
  }

  private int workSince(Piece piece, int slot, int home) {
    boolean hit = isOfBefore(piece, slot, workBy.of(piece, slot, home));
    return hit ? work.of(piece, slot, home) : NONE;
  }

  private int decisionSince(Piece piece) {
    boolean reused = piece.decision.equals("REUSE");
    if (!piece.decision.isEmpty() && !reused) {
      return piece.decided;
    }
    int bad = foundBadSince(piece, reused);
    boolean asked = !reused && !piece.isNew && piece.state != State.IN;
    return bad != NONE || !asked ? bad : scene.asked;
  }

  private static int foundBadSince(Piece piece, boolean reused) {
    return piece.looks.values().stream()
        .filter(answer -> answer.look().equals("FAIL") || answer.look().equals("SUSPECT"))
        .filter(answer -> !reused || answer.since() > piece.decided)
        .mapToInt(Piece.Answer::since)
        .max()
        .orElse(NONE);
  }

  /** Whether something stands against a part where it sits that no reason settled since. */
  private boolean isObjectedTo(Piece piece) {
    return objections(piece, piece.sits).stream()
        .anyMatch(it -> it.word() == Word.MUST_BE_NEW || it.since() >= piece.reason);
  }

  /** Whether a reason lets a part in where something stands against it. */
  boolean maySay(int number, int slot) {
    Piece piece = scene.piece(number);
    return piece.state != State.RETIRED
        && motor.canLive(piece.kind, motor.slot(slot))
        && objections(piece, slot).stream().noneMatch(it -> it.word() == Word.MUST_BE_NEW);
  }

  /** Whether a reason leaves a place as it is: not with a part in it that must be new. */
  boolean mayStay(int slot) {
    return scene.sitting(slot) < 0 || maySay(scene.sitting(slot), slot);
  }

  /** Nothing is there, and it is not left empty for a reason. */
  boolean isMissing(int slot) {
    return scene.sitting(slot) < 0 && !scene.leftEmpty[slot];
  }

  /** Something is there, and something stands against it. */
  boolean isFilledBut(int slot) {
    int here = scene.sitting(slot);
    return here >= 0 && isObjectedTo(scene.piece(here));
  }

  boolean canClose(String section) {
    return motor.slots.stream()
        .filter(slot -> slot.section().equals(section))
        .noneMatch(slot -> isMissing(slot.at()) || isFilledBut(slot.at()));
  }

  /** What was closed, unless something in it is open again. */
  Set<String> closedSections() {
    return scene.closed.stream().filter(this::canClose).collect(Collectors.toSet());
  }

  /** Whether a part must be new or machined, where it sits or else at its home. */
  boolean isBanned(int number) {
    Piece piece = scene.piece(number);
    int slot = piece.sits >= 0 ? piece.sits : piece.home;
    return bannedSince(piece, slot, piece.home) != NONE
        || workSince(piece, slot, piece.home) != NONE;
  }
}
