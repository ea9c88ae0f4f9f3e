package wherefrom.workings.plan;

import java.util.List;
import wherefrom.workings.Inputs;
import wherefrom.workings.Result;

/**
 * One worked-out column of the plan.
 *
 * @param name "now" or the what-if's name
 * @param inputs all inputs of the column
 * @param result every result with its band and what contributes to it
 * @param margins the gaps with a usual least
 * @param consequences what the column changes against now; none for now itself
 */
public record PlanColumn(
    String name, Inputs inputs, Result result, List<Margin> margins, List<Consequence> consequences)
    implements PlanAnswer {
  public PlanColumn {
    margins = List.copyOf(margins);
    consequences = List.copyOf(consequences);
  }

  /** The margins that are under their least or too near it for the uncertainty. */
  public List<Margin> listMarked() {
    return margins.stream().filter(margin -> margin.standing() != Margin.Standing.CLEAR).toList();
  }
}
