package wherefrom.referee;

/**
 * One thing done at the bench, in plain words and numbers.
 *
 * @param piece the part's number with the referee: the original parts are numbered as their slots,
 *     new ones count on
 * @param slot the slot; or the number of the new part that is bought; or of a cut how many
 *     thousandths of an inch it is from standard, -1 where nobody says
 * @param what a change, a check, a plan of readings, a section; of a new part how many thousandths
 *     it is from standard, or {@code listed} for the size that the buying list gives
 * @param answer where the change is made, the answer to the check, the sort of the new part
 */
record Act(Verb verb, int piece, int slot, String what, String answer) {

  enum Verb {
    OUT,
    FIT,
    ON_PURPOSE,
    TAKE_OUT,
    REPLACE,
    LOSE,
    FIND,
    WASH,
    WASHED,
    SEND,
    BACK,
    CHANGE,
    WORK,
    LOOK,
    READ,
    LOBE,
    DECIDE,
    ASK,
    CHECK,
    SLOT_UNKNOWN,
    EXCUSE,
    CLOSE,
    REOPEN,
    TAKE_BACK
  }

  static Act of(Verb verb, int piece) {
    return new Act(verb, piece, -1, "", "");
  }

  static Act at(Verb verb, int piece, int slot) {
    return new Act(verb, piece, slot, "", "");
  }

  static Act change(String what, String where) {
    return new Act(Verb.CHANGE, -1, -1, what, where);
  }

  /** The same change, to a size, and by the machine shop or not. */
  Act cutTo(int thousandths, boolean byShop) {
    return new Act(byShop ? Verb.WORK : verb, piece, thousandths, what, answer);
  }

  boolean isChange() {
    return verb == Verb.CHANGE || verb == Verb.WORK;
  }

  /** The same part bought, of a size and a sort. */
  Act of(String thousandths, String sort) {
    return new Act(verb, piece, slot, thousandths, sort);
  }

  /** The same part held the other way round. */
  Act turned() {
    return new Act(verb, piece, slot, what, "turned");
  }

  boolean isTurned() {
    return answer.equals("turned");
  }

  /** {@code PASS}, {@code SUSPECT} or {@code FAIL} to a quick test of a part. */
  static Act look(int piece, String check, String answer) {
    return new Act(Verb.LOOK, piece, -1, check, answer);
  }

  /** The same by a reading, that lies within its limit, at it, or outside. */
  static Act read(int piece, String plan, String answer) {
    return new Act(Verb.READ, piece, -1, plan, answer);
  }

  /** The look at the lobe that a lifter's slot runs on. */
  static Act lobe(int slot, String answer) {
    return new Act(Verb.LOBE, -1, slot, "lobe-look", answer);
  }

  /** The same by the lift of the lobe. */
  static Act lobeLift(int slot, String answer) {
    return new Act(Verb.LOBE, -1, slot, "lobe-lift", answer);
  }

  /** {@code REUSE}, {@code MACHINE} or {@code REPLACE}. */
  static Act decide(int piece, String decision) {
    return new Act(Verb.DECIDE, piece, -1, "", decision);
  }

  /** From now on a decision is wanted on {@code every} used part, or on doubtful ones only. */
  static Act ask(String about) {
    return new Act(Verb.ASK, -1, -1, "", about);
  }

  /** {@code PASS} or {@code FAIL} to a check that a rule asks for. */
  static Act check(String key, String answer) {
    return new Act(Verb.CHECK, -1, -1, key, answer);
  }

  static Act excuse(int slot) {
    return new Act(Verb.EXCUSE, -1, slot, "", "");
  }

  static Act close(String section) {
    return new Act(Verb.CLOSE, -1, -1, section, "");
  }

  /** The engine ran, and comes apart again. */
  static Act reopen() {
    return new Act(Verb.REOPEN, -1, -1, "", "");
  }

  static Act takeBack() {
    return new Act(Verb.TAKE_BACK, -1, -1, "", "");
  }

  /** {@code FIT lifter@1EX -> 1IN}, with {@code new 54} for parts bought. */
  String words(Motor motor) {
    StringBuilder words = new StringBuilder(verb.name().toLowerCase(java.util.Locale.ROOT));
    if (piece >= 0) {
      words.append(' ').append(name(motor, piece));
    }
    if (verb == Verb.REPLACE) {
      words.append(" by new#").append(slot);
    } else if (isChange()) {
      words.append(slot >= 0 ? " 0.0" + slot : "");
    } else if (slot >= 0) {
      words.append(" at ").append(motor.slot(slot).key());
    }
    return (words + " " + what + " " + answer).strip().replace("  ", " ");
  }

  static String name(Motor motor, int piece) {
    return piece < motor.slots.size() ? motor.slot(piece).key() : "new#" + piece;
  }
}
