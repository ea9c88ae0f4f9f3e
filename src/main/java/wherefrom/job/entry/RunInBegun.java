package wherefrom.job.entry;

/**
 * The run-in begins: the engine runs.
 *
 * @param lowRpm the least speed in rpm, above 0
 * @param highRpm the highest speed in rpm, not under the least
 * @param minutes how long it is to run in all, above 0
 * @param source where speed and minutes come from, such as the sheet of the cam
 * @param anyway why it begins although something is open before the first start; empty where
 *     nothing was
 */
public record RunInBegun(int lowRpm, int highRpm, int minutes, String source, String anyway)
    implements JobEntry {}
