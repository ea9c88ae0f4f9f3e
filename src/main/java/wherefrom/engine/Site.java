package wherefrom.engine;

import java.util.Optional;
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

  /** The number of its cylinder, main or cam bearing; empty of a bank and of all the engine. */
  default Optional<Integer> findNumber() {
    if (this instanceof Main main) {
      return Optional.of(main.number());
    }
    return this instanceof At at
        ? at.spot()
            .match(
                valve -> at.spot().findCylinder(),
                bore -> at.spot().findCylinder(),
                rod -> at.spot().findCylinder(),
                main -> Optional.of(main.number()),
                bearing -> Optional.of(bearing.number()))
        : findCylinder();
  }

  /** The one spot that it is; empty where it is more. */
  default Optional<Spot> findSpot() {
    return this instanceof At at ? Optional.of(at.spot()) : Optional.empty();
  }

  /** The cylinder that it names; empty where it names none, or more than one. */
  default Optional<Integer> findCylinder() {
    if (this instanceof BigEnd end) {
      return Optional.of(end.cylinder());
    }
    return this instanceof At at ? at.spot().findCylinder() : Optional.empty();
  }
}
