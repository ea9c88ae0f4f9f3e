package wherefrom.job.entry;

import java.util.List;

/**
 * What is in a bag, or hangs as one bunch; said again, the later holds.
 *
 * @param number the number on the bag's tag
 * @param what in the person's words: {@code head bolts, long}
 * @param bigPart the number of the big part that it belongs to; 0 for none
 * @param where in words, where it belongs to no big part; may be empty
 * @param pieces how many, at least 1
 * @param holes where each bolt came out, if anybody drew it
 * @param order thread and washer order in words; may be empty
 * @param with what goes on the threads at assembly
 */
public record BagFilled(
    int number,
    String what,
    int bigPart,
    String where,
    int pieces,
    List<BoltHole> holes,
    String order,
    AtAssembly with)
    implements JobEntry {
  public BagFilled {
    holes = List.copyOf(holes);
  }
}
