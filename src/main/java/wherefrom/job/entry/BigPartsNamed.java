package wherefrom.job.entry;

import java.util.List;
import wherefrom.parts.BigPartName;

/**
 * Big parts are kept from now on; their tags may be printed.
 *
 * @param first the number of the first of them; the others count on
 */
public record BigPartsNamed(int first, List<BigPartName> names) implements JobEntry {
  public BigPartsNamed {
    names = List.copyOf(names);
  }
}
