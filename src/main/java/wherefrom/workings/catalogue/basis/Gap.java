package wherefrom.workings.catalogue.basis;

import java.util.Optional;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.Note;
import wherefrom.workings.Source;
import wherefrom.workings.Values;
import wherefrom.workings.maths.DualNumber;

/**
 * A gap between two parts that must never meet. Where a working leaves none, it says in plain words
 * what would touch; where it leaves less than is usual, that. Whatever works one out says both
 * here.
 */
public enum Gap {
  PISTON_TO_HEAD(
      "piston-to-head",
      "The piston would hit the head",
      "piston-to-head-small",
      "the piston may touch the head at speed.",
      new Minimum("0.035 in (0.040 in for long rods or high speed)", "0.889", memory())),
  COIL_BIND(
      "coil-bind",
      "The spring's coils would bind before full lift",
      "coil-bind-near",
      "a bound spring bends the valvetrain.",
      new Minimum("0.060 in (0.050 to 0.100 in are named)", "1.524", memory())),
  RETAINER_TO_SEAL(
      "retainer-to-seal",
      "The retainer would hit the seal or the guide",
      "seal-near",
      "the retainer may crush the seal.",
      new Minimum("0.050 in", "1.27", memory())),
  ROCKER_SLOT(
      "rocker-slot",
      "The rocker's slot would hit its stud or pivot",
      "slot-near",
      "the rocker may be levered off its stud.",
      new Minimum("0.030 in", "0.762", memory())),
  PISTON_TO_INTAKE(
      "piston-to-intake",
      "The intake valve would hit the piston",
      "valve-near",
      "the intake valve may touch the piston.",
      new Minimum("0.080 in", "2.032", memory())),
  PISTON_TO_EXHAUST(
      "piston-to-exhaust",
      "The exhaust valve would hit the piston",
      "valve-near",
      "the exhaust valve may touch the piston.",
      new Minimum("0.100 in", "2.54", memory()));

  private final String key;
  private final String touch;
  private final String nearKey;
  private final String nearWords;

  @SuppressWarnings("ImmutableEnumChecker") // a record of words and a source cannot be changed
  private final Minimum least;

  Gap(String key, String touch, String nearKey, String nearWords, Minimum least) {
    this.key = key;
    this.touch = touch;
    this.nearKey = nearKey;
    this.nearWords = nearWords;
    this.least = least;
  }

  private static Source memory() {
    return Source.fromMemory();
  }

  public String key() {
    return key;
  }

  /** The least that is usual; the engine's own limit counts. */
  public Minimum least() {
    return least;
  }

  /** "The piston would hit the head": what happens where nothing is left. */
  public String touchWords() {
    return touch;
  }

  /**
   * Adds what is to be said of what is left, in mm; nothing where it is enough.
   *
   * @param unit to show it in
   */
  public Values withNote(Values values, DualNumber left, Unit unit) {
    return findTouch(left, unit)
        .map(values::note)
        .orElseGet(() -> values.noteIf(least.isUndercutBy(left), this::near));
  }

  private Note near() {
    return Note.caution(
        nearKey,
        "Less than the usual minimum of " + least.words() + ": " + nearWords,
        least.source());
  }

  /** What would touch; empty where anything is left. */
  public Optional<Note> findTouch(DualNumber left, Unit unit) {
    return DualNumber.of(0).isLessThan(left) ? Optional.empty() : Optional.of(touches(left, unit));
  }

  private Note touches(DualNumber left, Unit unit) {
    Amount over = Amount.of(Math.abs(left.toDouble()), Unit.MILLIMETRE).to(unit);
    return Note.caution(
        key + "-touches",
        touch + ": short by " + over.rounded(unit.decimals()).text() + ".",
        Source.workedOut("the figures given"));
  }
}
