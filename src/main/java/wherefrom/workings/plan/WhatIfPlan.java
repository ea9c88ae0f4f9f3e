package wherefrom.workings.plan;

import java.util.ArrayList;
import java.util.List;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Inputs;
import wherefrom.workings.MissingInputs;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Note;
import wherefrom.workings.Result;
import wherefrom.workings.WorkingAnswer;
import wherefrom.workings.catalogue.compression.CombustionSpace;
import wherefrom.workings.catalogue.valvetrain.ValveLift;

/** How things are now, and up to three what-ifs. */
public record WhatIfPlan(Inputs now, List<WhatIf> whatIfs) {
  public static final int MOST_WHAT_IFS = 3;
  private static final String NOW = "now";

  /**
   * @throws IllegalArgumentException where there are more than three what-ifs
   */
  public WhatIfPlan {
    whatIfs = List.copyOf(whatIfs);
    if (whatIfs.size() > MOST_WHAT_IFS) {
      throw new IllegalArgumentException("a plan holds at most " + MOST_WHAT_IFS + " ideas");
    }
  }

  /** All inputs of a what-if: those of now with its changes. */
  public Inputs inputsOf(WhatIf whatIf) {
    Inputs then = now.withAll(whatIf.changes());
    then = withBefore(then, CombustionSpace.GASKET_THICKNESS, PlanInputs.GASKET_BEFORE);
    then = withBefore(then, ValveLift.ROCKER_RATIO, PlanInputs.RATIO_BEFORE);
    return withBefore(then, ValveLift.LASH, PlanInputs.LASH_BEFORE);
  }

  /** Where a figure is another than now, the one of now stands beside it. */
  private Inputs withBefore(Inputs then, AmountInput input, AmountInput before) {
    boolean other = !now.find(input.key()).equals(then.find(input.key()));
    return now.findMeasured(input.key())
        .filter(figure -> other)
        .map(figure -> then.with(before.key(), figure))
        .orElse(then);
  }

  /** Now first, then the what-ifs in their order. */
  public List<PlanAnswer> work() {
    List<PlanAnswer> answers = new ArrayList<>();
    WorkingAnswer first = new PlanWorking().compute(now);
    answers.add(answer(NOW, now, first, first));
    for (WhatIf whatIf : whatIfs) {
      Inputs then = inputsOf(whatIf);
      PlanWorking working = new PlanWorking(ClearanceBasis.of(now, whatIf));
      answers.add(answer(whatIf.name(), then, first, working.compute(then)));
    }
    return List.copyOf(answers);
  }

  private PlanAnswer answer(String name, Inputs then, WorkingAnswer first, WorkingAnswer own) {
    if (!(own instanceof Result result)) {
      return new PlanAnswer.Refused(name, nonsense(own));
    }
    List<WhatIfEffect> consequences =
        first instanceof Result before ? Consequences.of(now, before, then, result) : List.of();
    Result noted = withNotes(result, consequences);
    return new PlanColumn(name, then, noted, Margins.of(noted), consequences);
  }

  private static Nonsense nonsense(WorkingAnswer answer) {
    return answer instanceof MissingInputs missing
        ? new Nonsense("", missing.sentence())
        : (Nonsense) answer;
  }

  private static Result withNotes(Result result, List<WhatIfEffect> consequences) {
    List<Note> notes = new ArrayList<>(result.notes());
    if (consequences.contains(WhatIfEffect.CAM_CHANGED)
        || consequences.contains(WhatIfEffect.ROCKER_RATIO_CHANGED)) {
      notes.add(PlanNotes.CLEARANCE_OF_OTHER_CAM);
    }
    if (consequences.contains(WhatIfEffect.PUSHROD_LENGTH_CHANGED)) {
      notes.add(PlanNotes.CHECKING_PUSHROD);
    }
    return new Result(result.values(), notes, result.takenAsExact());
  }
}
