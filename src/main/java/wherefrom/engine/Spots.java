package wherefrom.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The spots of a layout, and spots read back from their keys. */
public final class Spots {
  private static final Pattern VALVE = Pattern.compile("(\\d{1,2})(IN|EX)");
  private static final Pattern HALF = Pattern.compile("([RM])(\\d{1,2})([UL])");
  private static final Pattern WHOLE = Pattern.compile("([BC])(\\d{1,2})");

  private Spots() {}

  /** Every valve of the layout, by cylinder number; intake before exhaust. */
  public static List<ValveSpot> valves(Layout layout) {
    List<ValveSpot> spots = new ArrayList<>();
    for (int cylinder : layout.cylinders()) {
      for (ValveSide side : ValveSide.values()) {
        spots.add(new ValveSpot(cylinder, side));
      }
    }
    return spots;
  }

  public static List<BoreSpot> bores(Layout layout) {
    return layout.cylinders().stream().map(BoreSpot::new).toList();
  }

  /** Both sides of every big end, by cylinder number. */
  public static List<RodSpot> rods(Layout layout) {
    List<RodSpot> spots = new ArrayList<>();
    for (int cylinder : layout.cylinders()) {
      for (ShellHalf half : ShellHalf.values()) {
        spots.add(new RodSpot(cylinder, half));
      }
    }
    return spots;
  }

  /** Both sides of every main bearing, front to rear. */
  public static List<MainSpot> mains(Layout layout) {
    List<MainSpot> spots = new ArrayList<>();
    for (int number = 1; number <= layout.mains(); number++) {
      for (ShellHalf half : ShellHalf.values()) {
        spots.add(new MainSpot(number, half));
      }
    }
    return spots;
  }

  public static List<CamBearingSpot> camBearings(Layout layout) {
    List<CamBearingSpot> spots = new ArrayList<>();
    for (int number = 1; number <= layout.camBearings(); number++) {
      spots.add(new CamBearingSpot(number));
    }
    return spots;
  }

  /** Every spot of the layout: valves, bores, rods, mains, cam bearings. */
  public static List<Spot> all(Layout layout) {
    List<Spot> spots = new ArrayList<>();
    spots.addAll(valves(layout));
    spots.addAll(bores(layout));
    spots.addAll(rods(layout));
    spots.addAll(mains(layout));
    spots.addAll(camBearings(layout));
    return spots;
  }

  /**
   * The spot that a person types by its {@link Spot#key()}: letters of any case, of a valve's side
   * the first alone, as {@code 3i} for {@code 3IN}; empty when the text is none.
   */
  public static Optional<Spot> findTyped(String typed) {
    String key = typed.replaceAll("\\s", "").toUpperCase(Locale.ROOT);
    boolean one = key.matches("[1-9][0-9]?[IE]");
    return find(one ? key + (key.endsWith("I") ? "N" : "X") : key);
  }

  /** The spot with this {@link Spot#key()}; empty when the text is no such key. */
  public static Optional<Spot> find(String key) {
    Matcher valve = VALVE.matcher(key);
    if (valve.matches()) {
      ValveSide side = valve.group(2).equals("IN") ? ValveSide.INTAKE : ValveSide.EXHAUST;
      return Optional.of(new ValveSpot(Integer.parseInt(valve.group(1)), side));
    }
    Matcher half = HALF.matcher(key);
    if (half.matches()) {
      int number = Integer.parseInt(half.group(2));
      ShellHalf which = half.group(3).equals("U") ? ShellHalf.UPPER : ShellHalf.LOWER;
      return Optional.of(
          half.group(1).equals("R") ? new RodSpot(number, which) : new MainSpot(number, which));
    }
    Matcher whole = WHOLE.matcher(key);
    if (whole.matches()) {
      int number = Integer.parseInt(whole.group(2));
      return Optional.of(
          whole.group(1).equals("B") ? new BoreSpot(number) : new CamBearingSpot(number));
    }
    return Optional.empty();
  }
}
