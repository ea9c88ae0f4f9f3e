package wherefrom.inspection.measure;

import java.util.List;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Sources;
import wherefrom.parts.PartKind;
import wherefrom.workings.catalogue.basis.Sisters;

/** What is read for a clearance alone: guides, rockers on a shaft, cam bearings, piston pins. */
final class ClearancePlans {
  static final List<ReadingPlan> ROWS =
      List.of(
          ReadingPlan.of(Feature.VALVE_SEAT, "guide-bore", "Valve guide", Derivation.SPREAD)
              .at("top", "Top of the guide")
              .at("middle", "Middle of the guide")
              .at("bottom", "Bottom of the guide, toward the seat")
              .how("Ball gauge and micrometer, along the rocker's push.")
              .between(4, 16)
              .alikeWithin(Sisters.SHAFT)
              .source(Sources.TM_653),
          ReadingPlan.of(PartKind.ROCKER, "rocker-bore", "Rocker bore", Derivation.SPREAD)
              .at("load", "Along the load, from the shaft to the head")
              .at("across", "Across it, turned by 90°")
              .between(8, 50)
              .alikeWithin(Sisters.SHAFT)
              .source(Sources.TM_670),
          ReadingPlan.of(Feature.ROCKER_SHAFT, "rocker-shaft", "Rocker shaft", Derivation.SPREAD)
              .at("load", "Along the load, where the rocker wears it")
              .at("across", "Across it, turned by 90°")
              .between(8, 50)
              .alikeWithin(Sisters.SHAFT)
              .source(Sources.TM_670),
          edges(
                  ReadingPlan.of(
                      PartKind.CAM_BEARING,
                      "cam-bearing-bore",
                      "Cam bearing bore",
                      Derivation.SPREAD))
              .how("Pressed in, the oil holes in line.")
              .between(20, 100)
              .source(Sources.TM_653),
          edges(
                  ReadingPlan.of(
                      Feature.CAM_JOURNAL, "cam-journal", "Cam journal", Derivation.SPREAD))
              .between(20, 100)
              .source(Sources.TM_653),
          edges(
                  ReadingPlan.of(
                      PartKind.PISTON, "pin-boss", "Pin bore of the piston", Derivation.SPREAD))
              .between(10, 60),
          ReadingPlan.of(PartKind.PISTON, "pin-diameter", "Piston pin", Derivation.SPREAD)
              .at("front-a", "Front end, where the piston holds it")
              .at("front-b", "Front end, turned by 90°")
              .at("middle-a", "Middle, where the rod holds it")
              .at("middle-b", "Middle, turned by 90°")
              .at("rear-a", "Rear end, where the piston holds it")
              .at("rear-b", "Rear end, turned by 90°")
              .how("The pin goes with its piston.")
              .between(10, 60)
              .alikeWithin(Sisters.SHAFT),
          edges(
                  ReadingPlan.of(
                      PartKind.ROD, "rod-small-end", "Small end of the rod", Derivation.SPREAD))
              .between(10, 60));

  private ClearancePlans() {}

  private static ReadingPlan edges(ReadingPlan plan) {
    return plan.at("front-a", "Front edge")
        .at("front-b", "Front edge, turned by 90°")
        .at("rear-a", "Rear edge")
        .at("rear-b", "Rear edge, turned by 90°")
        .alikeWithin(Sisters.SHAFT);
  }
}
