package wherefrom.job.entry;

import wherefrom.parts.Place;

/** A place stays empty, for a reason. */
public record PlaceExcused(Place place, String reason) implements JobEntry {}
