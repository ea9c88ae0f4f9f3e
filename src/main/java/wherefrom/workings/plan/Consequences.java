package wherefrom.workings.plan;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Inputs;
import wherefrom.workings.Result;
import wherefrom.workings.catalogue.compression.CombustionSpace;
import wherefrom.workings.catalogue.compression.RatioAfterCut;
import wherefrom.workings.catalogue.valvetrain.CoilBind;
import wherefrom.workings.catalogue.valvetrain.PistonToValve;
import wherefrom.workings.catalogue.valvetrain.PushrodLength;
import wherefrom.workings.catalogue.valvetrain.ValveLift;

/** Compares a what-if with how things are now. */
final class Consequences {
  private final Inputs now;
  private final Inputs then;
  private final Set<WhatIfEffect> found = EnumSet.noneOf(WhatIfEffect.class);

  private Consequences(Inputs now, Inputs then) {
    this.now = now;
    this.then = then;
  }

  static List<WhatIfEffect> of(Inputs now, Result resultNow, Inputs then, Result resultThen) {
    Consequences consequences = new Consequences(now, then);
    consequences.inputsChanged();
    consequences.resultsChanged(resultNow, resultThen);
    return List.copyOf(consequences.found);
  }

  private void inputsChanged() {
    addIf(WhatIfEffect.DECK_MILLED, changed(RatioAfterCut.DECK_CUT));
    addIf(WhatIfEffect.GASKET_CHANGED, changed(CombustionSpace.GASKET_THICKNESS));
    addIf(
        WhatIfEffect.CAM_CHANGED,
        changed(ValveLift.LOBE_LIFT) || changed(PushrodLength.BASE_RADIUS_LOSS));
    addIf(WhatIfEffect.ROCKER_RATIO_CHANGED, changed(ValveLift.ROCKER_RATIO));
    addIf(
        WhatIfEffect.SEAT_WORK,
        changed(PistonToValve.SEAT_SINK) || changed(PushrodLength.TIP_RISE));
    addIf(WhatIfEffect.SPRINGS_CHANGED, changed(CoilBind.SOLID));
    addIf(WhatIfEffect.SPRINGS_SHIMMED, changed(CoilBind.INSTALLED));
    addIf(WhatIfEffect.BORED, changed(CombustionSpace.BORE));
    addIf(WhatIfEffect.CRANK_CHANGED, changed(CombustionSpace.STROKE));
    addIf(WhatIfEffect.PISTONS_CHANGED, changed(CombustionSpace.PISTON_VOLUME));
  }

  private void resultsChanged(Result before, Result after) {
    double cut = value(after, "head-cut");
    addIf(WhatIfEffect.HEAD_MILLED, cut > value(before, "head-cut"));
    addIf(WhatIfEffect.INTAKE_CORRECTED, value(after, "intake-face") != 0);
    addIf(WhatIfEffect.PUSHROD_LENGTH_CHANGED, value(after, "pushrod-change") != 0);
    addIf(WhatIfEffect.LIFT_INCREASED, value(after, "lift") > value(before, "lift"));
  }

  private static double value(Result result, String key) {
    return result.findValue(key).map(v -> v.amount().inBase().doubleValue()).orElse(0.0);
  }

  /** Whether the sizes differ; absent counts as zero. */
  private boolean changed(AmountInput input) {
    return size(now, input) != size(then, input);
  }

  private static double size(Inputs inputs, AmountInput input) {
    return inputs
        .findMeasured(input.key())
        .map(measured -> measured.value().inBase().doubleValue())
        .orElse(0.0);
  }

  private void addIf(WhatIfEffect consequence, boolean applies) {
    if (applies) {
      found.add(consequence);
    }
  }
}
