package wherefrom.rules.debris;

/**
 * A find and what it points to.
 *
 * @param found {@code brown milk, dipstick}
 * @param pointsTo {@code suspect coolant in the oil.}, with its full stop
 */
public record Clue(String found, String pointsTo) {
  /** {@code brown milk, dipstick: suspect coolant in the oil.} */
  public String sentence() {
    return found + ": " + pointsTo;
  }
}
