package wherefrom.inspection.measure;

import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Sources;
import wherefrom.parts.PartKind;

/** Every pair of surfaces whose clearance follows from readings of both. */
public final class ClearancePairs {
  private static final List<ClearancePair> ALL =
      List.of(
          ClearancePair.of(
                  "piston-to-bore",
                  "Piston to bore",
                  ClearancePair.feature(Feature.BORE, "bore"),
                  ClearancePair.part(PartKind.PISTON, "piston-diameter"))
              .facing("middle", "middle of the bore", "thrust-middle", "skirt")
              .facing("bottom", "bottom of the bore", "thrust-bottom", "skirt")
              .how("Readings square to the crank count. The skirt never comes up to the ridge.")
              .source(Sources.TM_653),
          ClearancePair.of(
                  "lifter-to-bore",
                  "Lifter to bore",
                  ClearancePair.feature(Feature.LIFTER_BORE, "lifter-bore"),
                  ClearancePair.part(PartKind.LIFTER, "lifter-diameter"))
              .facing("top", "top", "top-a top-b", "top-a top-b")
              .facing("bottom", "bottom", "bottom-a bottom-b", "foot-a foot-b")
              .source(Sources.TM_653),
          ClearancePair.of(
                  "stem-to-guide",
                  "Stem to guide",
                  ClearancePair.feature(Feature.VALVE_SEAT, "guide-bore"),
                  ClearancePair.part(PartKind.VALVE, "stem-diameter"))
              // Just under its keeper groove a stem never comes into the guide.
              .facing("top", "top of the guide", "top", "middle")
              .facing("middle", "middle of the guide", "middle", "middle")
              .facing("bottom", "bottom of the guide", "bottom", "bottom")
              .source(Sources.TM_653),
          ClearancePair.of(
                  "rocker-to-shaft",
                  "Rocker to shaft",
                  ClearancePair.part(PartKind.ROCKER, "rocker-bore"),
                  ClearancePair.feature(Feature.ROCKER_SHAFT, "rocker-shaft"))
              .facing("load", "along the load", "load", "load")
              .facing("across", "across the load", "across", "across")
              .source(Sources.TM_670),
          ClearancePair.of(
                  "cam-to-bearing",
                  "Cam to bearing",
                  ClearancePair.part(PartKind.CAM_BEARING, "cam-bearing-bore"),
                  ClearancePair.feature(Feature.CAM_JOURNAL, "cam-journal"))
              .facing("front", "front edge", "front-a front-b", "front-a front-b")
              .facing("rear", "rear edge", "rear-a rear-b", "rear-a rear-b")
              .how("The bearing is measured pressed in.")
              .source(Sources.TM_653),
          ClearancePair.of(
                  "pin-to-piston",
                  "Pin to piston",
                  ClearancePair.part(PartKind.PISTON, "pin-boss"),
                  ClearancePair.part(PartKind.PISTON, "pin-diameter"))
              .facing("front", "front boss", "front-a front-b", "front-a front-b")
              .facing("rear", "rear boss", "rear-a rear-b", "rear-a rear-b")
              .pressed()
              .how("A pin may be a light push fit: negative is tight."),
          ClearancePair.of(
                  "pin-to-rod",
                  "Pin to rod",
                  ClearancePair.part(PartKind.ROD, "rod-small-end"),
                  ClearancePair.part(PartKind.PISTON, "pin-diameter"))
              .facing("front", "front edge", "front-a front-b", "middle-a middle-b")
              .facing("rear", "rear edge", "rear-a rear-b", "middle-a middle-b")
              .pressed()
              .how("A pressed pin is larger than its rod: negative is tight."));

  private ClearancePairs() {}

  public static List<ClearancePair> all() {
    return ALL;
  }

  public static Optional<ClearancePair> find(String key) {
    return ALL.stream().filter(pair -> pair.key().equals(key)).findFirst();
  }
}
