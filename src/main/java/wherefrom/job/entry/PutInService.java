package wherefrom.job.entry;

/**
 * The engine is in service and the record of its build is closed: from here on the job takes
 * nothing but what {@link wherefrom.job.InService} lists.
 *
 * @param words may be empty
 */
public record PutInService(String words) implements JobEntry {}
