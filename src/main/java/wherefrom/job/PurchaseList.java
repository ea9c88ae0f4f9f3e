package wherefrom.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wherefrom.job.entry.CostState;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.Effect;
import wherefrom.rules.consequence.OneCam;

/** What changes and findings ask to buy besides tagged parts. */
final class PurchaseList {
  private final EngineJob job;

  PurchaseList(EngineJob job) {
    this.job = job;
  }

  /** One line for each thing; what is committed or paid is left out. */
  List<Purchase> lines() {
    Map<String, Purchase> lines = new LinkedHashMap<>();
    for (StandingRule rule : job.rules().all()) {
      Consequence one = rule.consequence();
      boolean asked = rule.binding() && one.effect() == Effect.BUY;
      if (asked && !isSettledByALaterCam(rule) && !isOrdered(one.subject())) {
        String reason = one.rule() + ": " + String.join("; so: ", one.reasons());
        lines.putIfAbsent(one.subject(), new Purchase(one.subject(), one.pieces(), reason));
      }
    }
    return List.copyOf(lines.values());
  }

  /** A failed lobe asks for no cam once another one is in, or is asked for itself. */
  private boolean isSettledByALaterCam(StandingRule rule) {
    return rule.consequence().cause().kind() == ChangeKind.LOBE_FAILED
        && job.rules().all().stream()
            .filter(other -> other.sequence() > rule.sequence())
            .anyMatch(other -> OneCam.isDecidedBy(other.consequence().firstCause().kind()));
  }

  private boolean isOrdered(String what) {
    return new MoneyEntries(job)
        .lines().stream()
            .filter(line -> line.what().strip().equalsIgnoreCase(what))
            .anyMatch(
                line -> line.state() == CostState.COMMITTED || line.state() == CostState.PAID);
  }
}
