package wherefrom.job.reader;

/** A point on a picture, in pixels from its top left. */
public record Corner(double x, double y) {}
