package wherefrom.job.entry;

/** A torque card no longer holds, as after the bolts were loosened again. */
public record TorqueCardDropped(int card, String reason) implements JobEntry {}
