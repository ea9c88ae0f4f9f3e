package wherefrom.workings.torque;

/**
 * One bolt was tightened, or checked by the second person.
 *
 * @param stage from 1; one more than the last stage for the second person's check
 * @param bolt its number
 * @param outOfTurn whether another bolt was due and the person said that it was so all the same
 */
public record Tick(int stage, int bolt, String person, boolean outOfTurn) {}
