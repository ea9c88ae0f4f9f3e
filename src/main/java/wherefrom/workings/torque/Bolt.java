package wherefrom.workings.torque;

/**
 * One bolt of a pattern.
 *
 * @param number its turn in the order of tightening, from 1: what is drawn on it and said of it
 * @param row from 0, top to bottom as drawn
 * @param column from 0, left to right as drawn
 */
public record Bolt(int number, int row, int column) {}
