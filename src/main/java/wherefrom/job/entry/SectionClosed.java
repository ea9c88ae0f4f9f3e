package wherefrom.job.entry;

/** A section of the engine is closed: each of its places is filled or excused. */
public record SectionClosed(String section) implements JobEntry {}
