package wherefrom.job.entry;

import wherefrom.inspection.Decision;

/**
 * What becomes of something that carries no tag, such as the block; said again, the later holds.
 *
 * @param subject the {@link wherefrom.inspection.Subject#key()}
 * @param reason may be empty
 */
public record FeatureDecided(String subject, Decision decision, String reason)
    implements JobEntry {}
