package wherefrom.inspection;

/**
 * A figure seen in print: it belongs to that manual's engine and shows the size of such a limit. It
 * is no limit for the engine on the bench.
 */
public record Printed(String words, String source) {

  /** The figure, its source, and that it belongs to another engine. */
  public String text() {
    return words + " (" + source + "; another engine's figure)";
  }
}
