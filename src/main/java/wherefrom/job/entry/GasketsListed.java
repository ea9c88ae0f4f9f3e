package wherefrom.job.entry;

/**
 * Whether the gaskets and seals that are always new stand on the list of what to buy, as they
 * follow from what is open then; said again, the later holds.
 */
public record GasketsListed(boolean listed) implements JobEntry {}
