package wherefrom.job.entry;

/**
 * A bolt of a torque card was tightened.
 *
 * @param stage from 1
 * @param bolt its number in the order of tightening, from 1
 * @param person name or initials
 * @param outOfTurn whether another bolt was due, and the person said that it was so all the same
 */
public record BoltTightened(int card, int stage, int bolt, String person, boolean outOfTurn)
    implements JobEntry {}
