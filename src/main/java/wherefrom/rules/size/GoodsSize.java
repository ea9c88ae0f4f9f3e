package wherefrom.rules.size;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import wherefrom.engine.ValveSide;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Length;
import wherefrom.quantity.Unit;

/**
 * The size that a thing is bought and checked in under. Two sizes are one where they are the same
 * length in the same sense, in whatever unit: 0.020 in under and 0.508 mm under.
 */
public sealed interface GoodsSize {
  /** Of a thing that has no size that one could ask for. */
  static GoodsSize none() {
    return new Unsized();
  }

  /** The size that a thing was made in. */
  static GoodsSize standard() {
    return new Standard();
  }

  /** As it stands in logbooks, an amount apart. */
  String id();

  /** As a parts counter hears it: {@code 0.010 in under (ten under)}; empty where it has none. */
  String words();

  /** How far it is from standard; empty of a size that is no step. */
  default Optional<Amount> findOff() {
    return Optional.empty();
  }

  /** Whether it is standard, or a step from it. */
  default boolean isStep() {
    return false;
  }

  default boolean isNone() {
    return equals(none());
  }

  /** No size. */
  record Unsized() implements GoodsSize {
    @Override
    public String id() {
      return "";
    }

    @Override
    public String words() {
      return "";
    }
  }

  /** Standard. */
  record Standard() implements GoodsSize {
    @Override
    public String id() {
      return "standard";
    }

    @Override
    public String words() {
      return "standard";
    }

    @Override
    public boolean isStep() {
      return true;
    }
  }

  /** Valves of one side: intake and exhaust valves are of two sizes. */
  record OfSide(ValveSide side) implements GoodsSize {
    @Override
    public String id() {
      return side.name().toLowerCase(Locale.ROOT);
    }

    @Override
    public String words() {
      return side.word();
    }
  }

  /** In which sense a size is off standard. */
  enum Sense {
    /** Smaller: what fits a journal that was ground. */
    UNDER,
    /** Larger: what fits a bore that was bored. */
    OVER
  }

  /**
   * A step from standard.
   *
   * @param amount a length, more than 0, as it was said
   */
  record Off(Sense sense, Amount amount) implements GoodsSize {
    private Length length() {
      return Length.ofMillimetres(amount.to(Unit.MILLIMETRE).number());
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Off off && sense == off.sense && length().equals(off.length());
    }

    @Override
    public int hashCode() {
      return 31 * sense.hashCode() + length().hashCode();
    }

    @Override
    public String id() {
      return sense.name().toLowerCase(Locale.ROOT);
    }

    @Override
    public String words() {
      return SizeStepWords.said(amount, sense == Sense.UNDER);
    }

    @Override
    public Optional<Amount> findOff() {
      return Optional.of(amount);
    }

    @Override
    public boolean isStep() {
      return true;
    }
  }

  /** What an old logbook holds in words that say no size; it is the size of no line. */
  record Worded(String words) implements GoodsSize {
    @Override
    public String id() {
      return words;
    }
  }

  /** A step from standard; 0 is standard. */
  static GoodsSize of(Sense sense, Amount off) {
    return off.number().signum() == 0 ? standard() : new Off(sense, off);
  }

  /** The size of valves of a side; none of all else. */
  static GoodsSize of(Optional<ValveSide> side) {
    return side.<GoodsSize>map(OfSide::new).orElse(none());
  }

  /** What stands in a logbook under this id; earlier ones hold the words that were shown. */
  static GoodsSize ofLogbook(String id, Optional<Amount> off) {
    Optional<GoodsSize> step =
        off.flatMap(amount -> findSense(id).map(sense -> (GoodsSize) new Off(sense, amount)));
    return step.or(() -> read(id, Unit.ONE)).orElseGet(() -> new Worded(id));
  }

  private static Optional<Sense> findSense(String id) {
    return Arrays.stream(Sense.values())
        .filter(sense -> sense.name().toLowerCase(Locale.ROOT).equals(id))
        .findFirst();
  }

  /**
   * A size as it is shown or said: {@code 0.010 in under (ten under)}, {@code ten under}, {@code
   * standard}, {@code intake}. What was shown behind it, such as {@code , once ground}, says
   * nothing about the size.
   *
   * @param usual the unit of a figure that carries none
   */
  static Optional<GoodsSize> read(String text, Unit usual) {
    return SizeReading.read(text, usual);
  }
}
