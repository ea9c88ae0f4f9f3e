package wherefrom.job.entry;

import wherefrom.inspection.Look;

/**
 * A quick test of something that carries no tag was answered, such as a cam lobe; a later answer to
 * the same check there replaces an earlier one.
 *
 * @param subject the {@link wherefrom.inspection.Subject#key()}
 */
public record FeatureLooked(String subject, String check, Look look, String note)
    implements JobEntry {}
