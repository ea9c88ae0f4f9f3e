package wherefrom.workings.torque;

/**
 * One bolt of a pattern.
 *
 * @param number its label, from 1
 * @param row from 0, top to bottom as drawn
 * @param column from 0, left to right as drawn
 */
public record Bolt(int number, int row, int column) {}
