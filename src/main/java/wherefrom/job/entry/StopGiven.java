package wherefrom.job.entry;

import wherefrom.rules.VerdictName;

/**
 * A scan that was not answered by "right place".
 *
 * @param item the part, or 0 where none was named
 * @param spot the spot's key, or empty where none was named
 * @param word which verdict it was
 * @param sentence the verdict's sentence as it was shown
 * @param stands true of a stop, which stands until it is solved; false of a question
 * @param untagged whether the part had no tag, and was told by a person
 */
public record StopGiven(
    int item, String spot, VerdictName word, String sentence, boolean stands, boolean untagged)
    implements JobEntry {
  /** Of a part whose tag was read, or of none. */
  public StopGiven(int item, String spot, VerdictName word, String sentence, boolean stands) {
    this(item, spot, word, sentence, stands, false);
  }
}
