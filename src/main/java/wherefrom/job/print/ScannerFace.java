package wherefrom.job.print;

import java.util.List;

/**
 * The card that teaches a keyboard-type scanner: scanned once, its ten digits show how the scanner
 * and the keyboard layout turn digits into keys.
 *
 * @param digits what its symbol says: all ten digits in order
 * @param steps what to do, one sentence each
 */
public record ScannerFace(String digits, List<String> steps) implements Face {
  /** All ten digits in order. */
  public static final String TEN_DIGITS = "0123456789";

  private static final List<String> STEPS =
      List.of(
          "Open Settings, Scanner, and scan this card.",
          "Nothing happens? The scanner must send Enter after each scan. Its manual"
              + " says suffix or terminator: Enter, CR or Return. Scan the manual's code for"
              + " it, then this card again.");

  public ScannerFace {
    steps = List.copyOf(steps);
  }

  /** The card. */
  public static ScannerFace card() {
    return new ScannerFace(TEN_DIGITS, STEPS);
  }
}
