package wherefrom.rules.consequence;

import java.util.Map;
import java.util.Optional;

/** An engine takes one cam: work that ends in different cams cannot be done together. */
public final class OneCam {
  private static final Map<ChangeKind, String> CAMS =
      Map.of(
          ChangeKind.NEW_FLAT_CAM, "new flat",
          ChangeKind.ROLLER_TO_FLAT, "new flat",
          ChangeKind.CAM_REGROUND, "old, reground",
          ChangeKind.NEW_ROLLER_CAM, "roller",
          ChangeKind.FLAT_TO_ROLLER, "roller");

  private OneCam() {}

  /** Whether a change decides which cam the engine has. */
  public static boolean isDecidedBy(ChangeKind kind) {
    return CAMS.containsKey(kind);
  }

  /** Whether the two changes end in different cams. */
  public static boolean forbids(ChangeKind one, ChangeKind other) {
    Optional<String> cam = Optional.ofNullable(CAMS.get(one));
    return cam.isPresent()
        && CAMS.containsKey(other)
        && !cam.equals(Optional.ofNullable(CAMS.get(other)));
  }
}
