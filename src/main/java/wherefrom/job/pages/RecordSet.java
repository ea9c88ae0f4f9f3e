package wherefrom.job.pages;

import java.util.List;

/**
 * A kind of reading that was taken of several things, said once for all.
 *
 * @param about the plan's key, by which its plots are found
 * @param limits each limit with its source; none where none was typed
 */
public record RecordSet(String about, String title, List<String> limits) {
  public RecordSet {
    limits = List.copyOf(limits);
  }
}
