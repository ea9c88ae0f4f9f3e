package wherefrom.quantity;

import java.util.Locale;

/** Which country's paper and money are usual, where the system may not say. */
public final class HomeCountry {
  private HomeCountry() {}

  /**
   * The system's own where it names a country; else who works in inches is taken to be in the
   * United States.
   */
  public static Locale of(Locale system, UnitSystem units) {
    boolean said = !system.getCountry().isEmpty();
    return said || units != UnitSystem.INCH ? system : Locale.US;
  }
}
