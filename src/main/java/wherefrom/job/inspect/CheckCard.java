package wherefrom.job.inspect;

import wherefrom.inspection.Check;
import wherefrom.inspection.Look;

/** A quick test with its latest answer; not looked at, where there is none. */
public record CheckCard(Check check, Look look, String note) {}
