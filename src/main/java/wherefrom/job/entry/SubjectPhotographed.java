package wherefrom.job.entry;

/**
 * A photograph of something that carries no tag, such as a lifter bore, or one that was taken for a
 * quick test; the file is named by the SHA-256 of its content.
 *
 * @param subject the {@link wherefrom.inspection.Subject#key()}
 * @param check the key of the quick test; may be empty
 */
public record SubjectPhotographed(String subject, String check, String file, String caption)
    implements JobEntry {}
