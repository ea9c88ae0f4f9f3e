package wherefrom.rules.debris;

import wherefrom.inspection.Look;

/**
 * A look at one bearing, or at several at once.
 *
 * @param words what was looked at, such as {@code main 1, lower shell}
 */
public record BearingLook(String words, Look look) {

  /** {@code main 1, lower shell: pass}. */
  String answer() {
    return words + ": " + look.word();
  }
}
