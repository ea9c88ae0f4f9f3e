package wherefrom.job.entry;

import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Subject;
import wherefrom.quantity.Amount;
import wherefrom.rules.consequence.ShopWork;

/**
 * A line of a machine-shop slip for what is no tagged part, or for work with a figure.
 *
 * @param what {@code block}, {@code crankshaft}, {@code main caps}
 * @param count how many pieces go
 * @param wanted the work, with numbers
 * @param target the size wanted back
 * @param tolerance how far from it is good, in the same unit
 * @param keep true of what must not get lost
 * @param work its kind; lines of before kinds were asked for are {@link ShopWork#OTHER}
 * @param where the cylinders or banks it is done at; empty for all there are
 * @param beside the bag or the big part that it is about; empty where it has no tag. Lines of
 *     before that was kept tell it by {@code what} alone
 */
public record ShopLineAdded(
    int visit,
    int line,
    String what,
    int count,
    String wanted,
    Optional<Amount> target,
    Optional<Amount> tolerance,
    boolean keep,
    ShopWork work,
    List<String> where,
    Optional<Subject.Beside> beside)
    implements JobEntry {
  public ShopLineAdded {
    where = List.copyOf(where);
    Optional<Amount> size = target;
    tolerance = tolerance.flatMap(within -> size.map(good -> within.to(good.unit())));
  }
}
