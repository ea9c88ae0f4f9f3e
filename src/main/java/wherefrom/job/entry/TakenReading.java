package wherefrom.job.entry;

/** One reading exactly as it was entered; a station that stands twice was read twice. */
public record TakenReading(String station, String figure, String unit) {}
