package wherefrom.job;

import java.time.Instant;
import java.util.Optional;

/**
 * A note or a photograph.
 *
 * @param text the note, or the photograph's caption
 * @param photo the photograph's file name in the job's photo folder
 */
public record Remark(Instant time, String text, Optional<String> photo) {}
