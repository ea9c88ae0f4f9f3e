package wherefrom.job.entry;

/** A planned change is dropped again. */
public record PlanDropped(int plan, String reason) implements JobEntry {}
