package wherefrom.job.entry;

/** One bolt was tightened to its stage, or checked by a second person, as the card asked. */
public record BoltTicked(int card, int bolt, String person) implements JobEntry {}
