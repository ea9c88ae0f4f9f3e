package wherefrom.workings.timing;

import java.util.Locale;

/** Says a wheel angle the way timing figures are printed: "28.0 deg before top dead centre". */
public final class Event {
  private Event() {}

  /** The nearest dead centre, top or bottom, and the way from it. */
  public static String words(double degrees) {
    long halfTurns = Math.round(degrees / 180);
    double off = degrees - 180.0 * halfTurns;
    String centre = halfTurns % 2 == 0 ? "top dead center" : "bottom dead center";
    String side = off < 0 ? "before" : "after";
    return String.format(Locale.ROOT, "%.1f deg %s %s", Math.abs(off), side, centre);
  }
}
