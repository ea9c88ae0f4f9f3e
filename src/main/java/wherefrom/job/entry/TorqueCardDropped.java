package wherefrom.job.entry;

/** A torque card is not to be used, such as one with a wrong figure. */
public record TorqueCardDropped(int card, String reason) implements JobEntry {}
