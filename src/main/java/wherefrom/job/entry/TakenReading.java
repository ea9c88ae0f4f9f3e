package wherefrom.job.entry;

import wherefrom.quantity.Amount;

/** One reading exactly as it was entered; a station that stands twice was read twice. */
public record TakenReading(String station, Amount reading) {}
