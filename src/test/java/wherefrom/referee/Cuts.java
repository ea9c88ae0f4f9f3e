package wherefrom.referee;

import java.util.HashMap;
import java.util.Map;

/** How far surfaces were cut, in thousandths of an inch: all rods, all mains, each bore. */
final class Cuts {
  /** It was cut, and nobody said to what. */
  private static final int UNSAID = -1;

  private final Map<String, Integer> cuts = new HashMap<>();

  /** Takes in a change. */
  void take(Act act) {
    switch (act.what()) {
      case "ROD_JOURNALS_GROUND" -> cuts.put("R", act.slot());
      case "MAIN_JOURNALS_GROUND" -> cuts.put("M", act.slot());
      case "BORED" -> cuts.put(act.answer(), act.slot());
      case "CRANK_CHANGED" -> {
        cuts.put("R", UNSAID);
        cuts.put("M", UNSAID);
      }
      default -> {}
    }
  }

  /** Whether what a slot's part runs on was cut at all. */
  boolean isCut(Slot slot) {
    return cuts.containsKey(surface(slot));
  }

  /** What it was cut; 0 for standard, -1: nobody knows. */
  int of(Slot slot) {
    return cuts.getOrDefault(surface(slot), 0);
  }

  private static String surface(Slot slot) {
    return slot.kind().isShell() ? slot.journal().substring(0, 1) : slot.journal();
  }
}
