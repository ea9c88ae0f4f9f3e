package wherefrom.workings;

/**
 * The value of the unknown input that gives the wanted result.
 *
 * @param unknown the value with its band and the shares of the known inputs in it
 * @param result the working's full result with that value put in
 */
public record Solution(ResultValue unknown, Result result) implements BackwardAnswer {}
