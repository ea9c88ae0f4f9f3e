package wherefrom.job.entry;

import wherefrom.rules.debris.DebrisLook;
import wherefrom.rules.debris.DebrisPlace;

/** Debris of one look was found at one place. */
public record DebrisFound(DebrisPlace place, DebrisLook look, String note) implements JobEntry {}
