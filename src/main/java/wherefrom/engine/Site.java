package wherefrom.engine;

import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where on the engine something is done or found: at one spot, or at more than one at once, such as
 * a big end with both its halves. The key stands in logbooks and never changes.
 */
public sealed interface Site {
  /** {@code 3EX}, {@code B3}, {@code R5}, {@code M2}, a bank's name, or empty for all of it. */
  String key();

  /** All of the engine. */
  record Whole() implements Site {
    @Override
    public String key() {
      return "";
    }
  }

  /** One spot. */
  record At(Spot spot) implements Site {
    @Override
    public String key() {
      return spot.key();
    }
  }

  /** The big end of a cylinder, both halves. */
  record BigEnd(int cylinder) implements Site {
    @Override
    public String key() {
      return "R" + cylinder;
    }
  }

  /** A main bearing, both halves. */
  record Main(int number) implements Site {
    @Override
    public String key() {
      return "M" + number;
    }
  }

  /** A bank, by its name. */
  record OfBank(String bank) implements Site {
    @Override
    public String key() {
      return bank;
    }
  }

  Pattern BEARING = Pattern.compile("([RM])(\\d{1,2})");

  /** The site of this key; what is no other key is taken for a bank's name. */
  static Site of(String key) {
    if (key.isEmpty()) {
      return new Whole();
    }
    Matcher bearing = BEARING.matcher(key);
    if (bearing.matches()) {
      int number = Integer.parseInt(bearing.group(2));
      return bearing.group(1).equals("R") ? new BigEnd(number) : new Main(number);
    }
    return Spots.find(key).<Site>map(At::new).orElseGet(() -> new OfBank(key));
  }

  /** The bearing that a spot is one half of, or the spot itself. */
  static Site around(Spot spot) {
    return spot.match(
        At::new,
        At::new,
        rod -> new BigEnd(rod.cylinder()),
        main -> new Main(main.number()),
        At::new);
  }

  /** What the function for its kind makes of it. */
  default <R> R match(
      Function<Whole, R> whole,
      Function<At, R> at,
      Function<BigEnd, R> bigEnd,
      Function<Main, R> main,
      Function<OfBank, R> bank) {
    if (this instanceof Whole one) {
      return whole.apply(one);
    }
    if (this instanceof At one) {
      return at.apply(one);
    }
    if (this instanceof BigEnd one) {
      return bigEnd.apply(one);
    }
    if (this instanceof Main one) {
      return main.apply(one);
    }
    return bank.apply((OfBank) this);
  }

  /** The number of its cylinder, main or cam bearing; empty of a bank and of all the engine. */
  default Optional<Integer> findNumber() {
    return match(
        whole -> Optional.empty(),
        at -> Optional.of(at.spot().number()),
        end -> Optional.of(end.cylinder()),
        main -> Optional.of(main.number()),
        bank -> Optional.empty());
  }

  /** The one spot that it is; empty where it is more. */
  default Optional<Spot> findSpot() {
    return match(
        whole -> Optional.empty(),
        at -> Optional.of(at.spot()),
        end -> Optional.empty(),
        main -> Optional.empty(),
        bank -> Optional.empty());
  }

  /** The cylinder that it names; empty where it names none, or more than one. */
  default Optional<Integer> findCylinder() {
    return match(
        whole -> Optional.empty(),
        at -> at.spot().findCylinder(),
        end -> Optional.of(end.cylinder()),
        main -> Optional.empty(),
        bank -> Optional.empty());
  }
}
