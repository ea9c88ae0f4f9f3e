package wherefrom.workings.plan;

import java.util.ArrayList;
import java.util.List;
import wherefrom.workings.Result;
import wherefrom.workings.catalogue.basis.Gap;

/** The gaps of a plan's results, each beside its usual least. */
final class Margins {
  private Margins() {}

  static List<Margin> of(Result result) {
    List<Margin> margins = new ArrayList<>();
    for (Gap gap : Gap.values()) {
      result.findValue(gap.key()).ifPresent(found -> margins.add(new Margin(found, gap)));
      result
          .findValue(ClearanceBasis.atLeast(gap))
          .ifPresent(found -> margins.add(new Margin(found, gap, true)));
    }
    return List.copyOf(margins);
  }
}
