package wherefrom.ui.puttogether;

import wherefrom.job.puttogether.FitMode;
import wherefrom.parts.Action;

/** Which action cards are about the parts here; the others work the keys. */
final class TakenCards {
  private TakenCards() {}

  static boolean takes(PutTogetherModel model, Action card) {
    boolean stopped = model.stop().isPresent();
    boolean reasons = stopped && model.canFitOnPurpose();
    return switch (card) {
      case UNDO, REPEAT -> true;
      case SKIP -> stopped || model.mode() == FitMode.FOLLOW_THE_LIST;
      case NEXT -> reasons;
      case YES -> reasons && (model.reason().isPresent() || model.stopped().first().isScan());
      case HELP -> false;
    };
  }
}
