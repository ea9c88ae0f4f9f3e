package wherefrom.job;

import wherefrom.workings.ResultValue;

/** The least and the most oil clearance of one bearing over the positions measured. */
public record ClearanceRange(ResultValue smallest, ResultValue largest) {}
