package wherefrom.workings;

/**
 * How much of a result's variance comes from one input.
 *
 * @param fraction from 0 to 1; the fractions of one result add up to 1
 */
public record Share(String inputKey, String inputWords, double fraction) {}
