package wherefrom.ui.drawn;

import java.util.EnumSet;
import java.util.Set;
import wherefrom.parts.PartKind;

/** The kinds that an engine shows only where they are what is asked about. */
final class OnlyChosen {
  private static final Set<PartKind> KINDS =
      EnumSet.of(
          PartKind.PIVOT,
          PartKind.VALVE,
          PartKind.RETAINER,
          PartKind.KEEPERS,
          PartKind.CAM_BEARING,
          PartKind.PISTON);

  private OnlyChosen() {}

  static boolean has(PartKind kind) {
    return KINDS.contains(kind);
  }
}
