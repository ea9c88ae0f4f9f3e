package wherefrom.ui.puttogether;

import wherefrom.job.puttogether.FitMode;
import wherefrom.parts.Action;

/**
 * Which action cards are about the parts here; the others work the keys. NEXT and YES do so on a
 * stop, too: what overrules it is a key, and no card beside the keys.
 */
final class TakenCards {
  private TakenCards() {}

  static boolean takes(PutTogetherModel model, Action card) {
    boolean stopped = model.stop().isPresent();
    return switch (card) {
      case UNDO, REPEAT -> true;
      case SKIP -> stopped || model.mode() == FitMode.FOLLOW_THE_LIST;
      case NEXT, YES, HELP -> false;
    };
  }
}
