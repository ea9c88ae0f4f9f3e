package wherefrom.ui.puttogether;

import wherefrom.parts.Place;
import wherefrom.rules.CarrierRule;
import wherefrom.rules.HolderRule;
import wherefrom.rules.JobFacts;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;

/** Leads to what a part cannot be in without: its head, rocker shaft, cap or rod. */
final class ToCarrier {
  private ToCarrier() {}

  static void open(ScreenContext context, Place place) {
    JobFacts bench = context.state().bench();
    CarrierRule.findLacking(bench, place)
        .ifPresent(head -> context.navigator().show(ScreenId.BIG_PART, head.part().number()));
    HolderRule.findAway(bench, place)
        .ifPresent(holder -> context.navigator().show(ScreenId.PART, holder.item()));
  }
}
