package wherefrom.workings.plan;

import java.util.List;
import java.util.Optional;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;

/**
 * One column of a plan as a single working, so that each result's band is shared out among the
 * figures that were measured, not among results in between.
 */
public final class PlanWorking implements Working {
  private static final WorkingCard CARD =
      new WorkingCard(
          "plan",
          "Plan of the rebuild",
          PlanInputs.all(),
          "target ratio → head cut → intake correction → pushrod length → lift limits → piston to"
              + " valve, each = as in the working of that name",
          Source.workedOut("the single workings"),
          List.of(
              "A cut that is not given counts as none. A result that lacks an input is left"
                  + " out.",
              "Only the engine's own limits count. Usual minimums are marked so."));

  private final ClearanceBasis basis;

  /** A column whose clearances were measured with the parts that it has. */
  public PlanWorking() {
    this(ClearanceBasis.SAME_PARTS);
  }

  PlanWorking(ClearanceBasis basis) {
    this.basis = basis;
  }

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    PlanDraft draft = new PlanDraft(terms);
    Optional<Nonsense> trouble = RatioStep.work(draft);
    if (trouble.isPresent()) {
      return trouble.get();
    }
    ValvetrainStep.work(draft);
    RoomAtValves.work(draft, basis);
    return draft.values();
  }
}
