package wherefrom.job.entry;

import wherefrom.parts.TagType;

/**
 * A photograph of a bag or a big part; the file is named by the SHA-256 of its content.
 *
 * @param of {@link TagType#BAG} or {@link TagType#BIG_PART}
 * @param number its number
 */
public record LoosePhotographed(TagType of, int number, String file, String caption)
    implements JobEntry {}
