package wherefrom.job.entry;

/**
 * A measuring tool of the person's own; listed again under the same name, the later card counts.
 *
 * @param unit of the three figures, as typed
 * @param resolution the smallest step that it shows
 * @param error by how much it may be off, at most
 * @param repeat by how much a repeat may differ, at most
 */
public record ToolListed(String name, String unit, String resolution, String error, String repeat)
    implements JobEntry {}
