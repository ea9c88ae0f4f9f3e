package wherefrom.job.pages;

/**
 * A count on the first page.
 *
 * @param of out of how many; 0 where it is not a part of anything
 */
public record RecordFigure(int count, int of, String words) {}
