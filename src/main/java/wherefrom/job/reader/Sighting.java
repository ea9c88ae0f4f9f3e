package wherefrom.job.reader;

import java.util.List;

/**
 * A code that was read on a picture.
 *
 * @param text what it says: sixteen digits, or any text of a foreign code
 * @param basis how it was read
 * @param corners the symbol's four corners on the picture, clockwise from its own top left
 */
public record Sighting(String text, Basis basis, List<Corner> corners) {

  /** How a code was read. */
  public enum Basis {
    /** Matched against the tags that were issued for the open job. */
    ISSUED,
    /**
     * Decoded from its own error correction, and its check digits agree; or matched against the
     * tags of other jobs.
     */
    DECODED,
    /** Decoded, but not one of our tags. */
    FOREIGN
  }

  public Sighting {
    corners = List.copyOf(corners);
  }
}
