package wherefrom.job.entry;

/**
 * A second person went over a bolt of a torque card.
 *
 * @param bolt its number in the order of tightening, from 1
 * @param person name or initials
 * @param outOfTurn whether another bolt was due, and the person said that it was so all the same
 */
public record BoltChecked(int card, int bolt, String person, boolean outOfTurn)
    implements JobEntry {}
