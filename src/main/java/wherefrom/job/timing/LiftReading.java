package wherefrom.job.timing;

import wherefrom.quantity.Amount;

/** A reading as typed: the wheel in crank degrees from top dead centre, and the dial. */
public record LiftReading(Amount degrees, Amount lift) {}
