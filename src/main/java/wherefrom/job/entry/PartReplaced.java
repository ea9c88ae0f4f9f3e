package wherefrom.job.entry;

/**
 * A part is replaced by a new one for the same kind of place; the old one is retired.
 *
 * @param size how far the new part is from the standard size, as typed: {@code 0.010} with {@code
 *     in} for shells "ten under" and pistons "ten over", {@code 0} for standard; empty where nobody
 *     said
 * @param unit of the size; empty where none is given
 * @param sort what it is where it is another sort than the old one, such as {@code roller}; empty
 *     for the same
 */
public record PartReplaced(
    int oldItem, int newItem, String reason, String size, String unit, String sort)
    implements JobEntry {

  /** A new part like the old one, of which nobody said the size. */
  public static PartReplaced like(int oldItem, int newItem, String reason) {
    return new PartReplaced(oldItem, newItem, reason, "", "", "");
  }
}
