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
 */
public record StopGiven(int item, String spot, VerdictName word, String sentence, boolean stands)
    implements JobEntry {}
