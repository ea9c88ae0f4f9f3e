package wherefrom.rules.consequence;

import java.util.List;
import java.util.Optional;
import wherefrom.engine.Bank;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.Layout;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ValveSpot;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.quantity.Amount;

/**
 * A kind of work at the machine shop, and the change that it amounts to once it is back. The names
 * stand in logbooks: they never change.
 */
public enum ShopWork {
  BORE("bore", "block", ChangeKind.BORED, Size.DIAMETER),
  HONE("hone", "block", ChangeKind.HONED, Size.NONE),
  GRIND_RODS("grind the rod journals", "crankshaft", ChangeKind.ROD_JOURNALS_GROUND, Size.DIAMETER),
  GRIND_MAINS(
      "grind the main journals", "crankshaft", ChangeKind.MAIN_JOURNALS_GROUND, Size.DIAMETER),
  POLISH("polish the crank", "crankshaft", ChangeKind.CRANK_POLISHED, Size.NONE),
  RESIZE("resize rods", "rods with their caps", ChangeKind.ROD_RESIZED, Size.NONE),
  LINE_HONE("line-hone the mains", "block", ChangeKind.LINE_HONED, Size.NONE),
  MILL_HEAD("mill a head", "cylinder heads", ChangeKind.HEAD_MILLED, Size.TAKEN_OFF),
  MILL_DECK("mill a deck", "block", ChangeKind.DECK_MILLED, Size.TAKEN_OFF),
  VALVES("valve work", "cylinder heads", ChangeKind.VALVE_JOB, Size.NONE),
  CRACK_TEST("check for cracks", ""),
  STUD("replace a stud", "cylinder heads"),
  OTHER("other", "");

  /** What the size of a line means. */
  private enum Size {
    /** The diameter that is wanted back. */
    DIAMETER,
    /** How much comes off. */
    TAKEN_OFF,
    /** None that the change speaks of. */
    NONE
  }

  private final String words;
  private final String usualThing;
  private final Optional<ChangeKind> change;
  private final Size size;

  ShopWork(String words, String usualThing) {
    this(words, usualThing, Optional.empty(), Size.NONE);
  }

  ShopWork(String words, String usualThing, ChangeKind change, Size size) {
    this(words, usualThing, Optional.of(change), size);
  }

  ShopWork(String words, String usualThing, Optional<ChangeKind> change, Size size) {
    this.words = words;
    this.usualThing = usualThing;
    this.change = change;
    this.size = size;
  }

  public String words() {
    return words;
  }

  /** What goes to the shop for it; empty where that may be anything. */
  public String usualThing() {
    return usualThing;
  }

  /** The change that it is once it is back; empty where nothing follows by itself. */
  public Optional<ChangeKind> change() {
    return change;
  }

  /** Whether its size is the diameter that a journal or a bore is cut to. */
  public boolean isToDiameter() {
    return size == Size.DIAMETER;
  }

  /** Whether the change speaks of its size. */
  public boolean isSized() {
    return size != Size.NONE;
  }

  /** What is asked of its size; only of work that is sized. */
  public String sizeQuestion(String unit) {
    String question =
        isToDiameter()
            ? "The diameter wanted, or the step from standard, in " + unit + "."
            : "How much comes off, in " + unit + "?";
    return question + " Done alone: not said.";
  }

  /** Every place that such work can name; a single empty one where it is done on all alike. */
  public List<String> listWhere(Layout layout) {
    return change.map(kind -> kind.reach().where(layout)).orElse(List.of(""));
  }

  /** Whether each place is a piece of its own, so that fewer pieces leave some places out. */
  private boolean isOnePieceEach() {
    return this == RESIZE || this == MILL_HEAD || this == VALVES;
  }

  /** How many pieces go for such work at these places. */
  public int countPieces(List<String> where) {
    return isOnePieceEach() ? where.size() : 1;
  }

  /** The changes that such work is, at these places; no place means all. */
  public List<Change> changes(List<String> where, Optional<Amount> size, Layout layout) {
    List<String> places = where.isEmpty() ? listWhere(layout) : where;
    return change
        .map(
            kind ->
                places.stream()
                    .map(place -> Change.sized(kind, place, size.filter(any -> isSized())))
                    .toList())
        .orElse(List.of());
  }

  /** Where such work is done when this part goes for it; empty where it is none for the part. */
  public Optional<String> findWhere(Place home, Layout layout) {
    if (this == RESIZE && home.spot() instanceof RodSpot rod) {
      return Optional.of(new BoreSpot(rod.cylinder()).key());
    }
    return this == VALVES && home.spot() instanceof ValveSpot valve
        ? layout.findBank(valve.cylinder()).map(Bank::name)
        : Optional.empty();
  }

  /** Whether a tagged part of this kind goes to the shop for it. */
  public boolean isFor(PartKind kind) {
    return switch (this) {
      case RESIZE -> kind == PartKind.ROD || kind == PartKind.ROD_CAP;
      case VALVES -> kind == PartKind.VALVE;
      case CRACK_TEST, OTHER -> true;
      default -> false;
    };
  }

  /** What is wrong with such a line, in a sentence; empty when nothing is. */
  public Optional<String> findFault(List<String> where, int pieces, Layout layout) {
    List<String> known = listWhere(layout);
    if (known.equals(List.of(""))) {
      return where.isEmpty()
          ? Optional.empty()
          : Optional.of(
              "\"" + words + "\" is done on the whole engine alike. Leave the places out.");
    }
    if (where.isEmpty()) {
      return isOnePieceEach() && pieces < known.size()
          ? Optional.of("Say which: " + String.join(", ", known) + ".")
          : Optional.empty();
    }
    return where.stream()
        .filter(place -> !known.contains(place))
        .findFirst()
        .map(
            place ->
                "\""
                    + place
                    + "\" is not where this engine can have \""
                    + words
                    + "\": give one of "
                    + String.join(", ", known)
                    + ".");
  }
}
