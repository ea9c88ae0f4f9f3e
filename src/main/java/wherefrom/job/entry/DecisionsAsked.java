package wherefrom.job.entry;

/**
 * Whether the job asks for a decision on every used part before it is fitted, or only on those that
 * have something against them. The last one counts.
 */
public record DecisionsAsked(boolean everyPart) implements JobEntry {}
