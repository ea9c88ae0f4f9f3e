package wherefrom.job.entry;

import java.util.List;

/** Parts came back from the machine shop; earlier decisions to machine them are spent. */
public record BackFromShop(int visit, List<Integer> items, String done) implements JobEntry {
  public BackFromShop {
    items = List.copyOf(items);
  }
}
