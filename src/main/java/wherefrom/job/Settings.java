package wherefrom.job;

import java.nio.file.Path;
import wherefrom.quantity.UnitSystem;

/**
 * What the person has set for this machine.
 *
 * @param shop the folder that holds the jobs
 * @param units for new jobs
 * @param textPercent 100, 150 or 200
 * @param pixelsPerMm measured with a card held to the screen; 0 while unknown
 * @param sound whether cues are sounded
 * @param scannerPrefix what a keyboard-type scanner sends before each code; empty for nothing
 * @param scannerDigits how the digits 0 to 9 arrive from a scanner whose layout was taught; empty
 *     while not taught
 * @param camera the id of the chosen camera; empty while none is chosen
 */
public record Settings(
    Path shop,
    UnitSystem units,
    int textPercent,
    double pixelsPerMm,
    boolean sound,
    String scannerPrefix,
    String scannerDigits,
    String camera) {

  public static Settings fresh(Path shop) {
    return new Settings(shop, UnitSystem.INCH, 100, 0, true, "", "", "");
  }

  public Settings withShop(Path folder) {
    return new Settings(
        folder, units, textPercent, pixelsPerMm, sound, scannerPrefix, scannerDigits, camera);
  }

  public Settings withUnits(UnitSystem chosen) {
    return new Settings(
        shop, chosen, textPercent, pixelsPerMm, sound, scannerPrefix, scannerDigits, camera);
  }

  public Settings withTextPercent(int percent) {
    return new Settings(
        shop, units, percent, pixelsPerMm, sound, scannerPrefix, scannerDigits, camera);
  }

  public Settings withPixelsPerMm(double measured) {
    return new Settings(
        shop, units, textPercent, measured, sound, scannerPrefix, scannerDigits, camera);
  }

  public Settings withSound(boolean on) {
    return new Settings(
        shop, units, textPercent, pixelsPerMm, on, scannerPrefix, scannerDigits, camera);
  }

  public Settings withScanner(String prefix, String digits) {
    return new Settings(shop, units, textPercent, pixelsPerMm, sound, prefix, digits, camera);
  }

  public Settings withCamera(String id) {
    return new Settings(
        shop, units, textPercent, pixelsPerMm, sound, scannerPrefix, scannerDigits, id);
  }
}
