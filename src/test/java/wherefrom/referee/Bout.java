package wherefrom.referee;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import wherefrom.referee.Referee.Word;

/** Program and referee side by side: both are told each act, and asked the same afterwards. */
final class Bout {
  private final Motor motor;
  private final Program program;
  private final Story story;

  Bout(Motor motor, Program program) {
    this(motor, program, new Story(motor));
  }

  private Bout(Motor motor, Program program, Story story) {
    this.motor = motor;
    this.program = program;
    this.story = story;
  }

  Bout copy() {
    return new Bout(motor, program.copy(), story.copy());
  }

  Story story() {
    return story;
  }

  /**
   * Does an act on both sides.
   *
   * @return how they differ about whether it can be done, or about what is said of a fit
   */
  Optional<String> perform(Act act) {
    if (act.piece() >= 0 && !story.scene().pieces.containsKey(act.piece())) {
      return Optional.empty();
    }
    Optional<String> before =
        act.verb() == Act.Verb.FIT
            ? differ(act.piece(), act.slot(), act.isTurned())
            : Optional.empty();
    boolean told = story.tell(act);
    boolean done = program.perform(act);
    return before.or(
        () ->
            told == done
                ? Optional.empty()
                : Optional.of(
                    act.words(motor)
                        + (done
                            ? ": done, but the referee forbids it"
                            : ": refused, but possible")));
  }

  private Optional<String> differ(int piece, int slot, boolean turned) {
    Word should = story.referee().judge(piece, slot, turned);
    Word says = program.judge(piece, slot, turned);
    return should == says
        ? Optional.empty()
        : Optional.of(
            Act.name(motor, piece)
                + " at "
                + motor.slot(slot).key()
                + ": program "
                + says
                + ", referee "
                + should);
  }

  /** The first difference about these pieces, each at these slots of its kind. */
  Optional<String> compare(Iterable<Integer> pieces, Set<Integer> slots) {
    for (int number : pieces) {
      Piece piece = story.scene().piece(number);
      for (int slot : slots) {
        if (motor.slot(slot).kind() == piece.kind) {
          Optional<String> found = differ(number, slot, false);
          if (found.isPresent()) {
            return found;
          }
        }
      }
    }
    return Optional.empty();
  }

  /** The pieces that live at these slots, at each of them. */
  Optional<String> compareThese(Set<Integer> slots) {
    List<Integer> pieces = new ArrayList<>();
    for (Piece piece : story.scene().pieces.values()) {
      if (slots.contains(piece.home)) {
        pieces.add(piece.number);
      }
    }
    return compare(pieces, slots);
  }

  /** Every piece at its home and where it sits, turned too, and at the next slots of its kind. */
  Optional<String> compareAll(int others) {
    for (Piece piece : List.copyOf(story.scene().pieces.values())) {
      Set<Integer> slots = new TreeSet<>(neighbours(piece, others));
      slots.add(piece.home);
      if (piece.sits >= 0) {
        slots.add(piece.sits);
      }
      Optional<String> found =
          compare(List.of(piece.number), slots).or(() -> differ(piece.number, piece.home, true));
      if (found.isPresent()) {
        return found;
      }
    }
    return compareLists();
  }

  /** Every piece in one way, another for each: at its home, turned there, or at the next slot. */
  Optional<String> compareEach() {
    for (Piece piece : List.copyOf(story.scene().pieces.values())) {
      boolean next = piece.number % 4 == 0;
      int slot = next ? neighbours(piece, 1).stream().findFirst().orElse(piece.home) : piece.home;
      Optional<String> found = differ(piece.number, slot, piece.number % 4 == 1);
      if (found.isPresent()) {
        return found;
      }
    }
    return compareLists();
  }

  private List<Integer> neighbours(Piece piece, int most) {
    List<Integer> found = new ArrayList<>();
    int count = motor.slots.size();
    for (int step = 1; step < count && found.size() < most; step++) {
      int slot = (piece.home + step) % count;
      if (motor.slot(slot).kind() == piece.kind) {
        found.add(slot);
      }
    }
    return found;
  }

  /** What is missing, what is filled but objected to, and what is closed. */
  Optional<String> compareLists() {
    Referee referee = story.referee();
    Set<Integer> missing = new TreeSet<>();
    Set<Integer> filledBut = new TreeSet<>();
    for (Slot slot : motor.slots) {
      if (referee.isMissing(slot.at())) {
        missing.add(slot.at());
      }
      if (referee.isFilledBut(slot.at())) {
        filledBut.add(slot.at());
      }
    }
    Set<String> closed = referee.closedSections();
    return same("missing", program.missing(), missing)
        .or(() -> same("filled but", program.filledBut(), filledBut))
        .or(() -> same("closed", program.closed(), closed));
  }

  private <T> Optional<String> same(String what, Set<T> program, Set<T> referee) {
    if (program.equals(referee)) {
      return Optional.empty();
    }
    Set<String> more = names(program);
    more.removeAll(names(referee));
    Set<String> less = names(referee);
    less.removeAll(names(program));
    return Optional.of(what + ": program alone " + more + ", referee alone " + less);
  }

  /** Of slots their keys, of sections their names. */
  private Set<String> names(Set<?> all) {
    Set<String> names = new TreeSet<>();
    all.forEach(one -> names.add(one instanceof Integer at ? motor.slot(at).key() : one + ""));
    return names;
  }
}
