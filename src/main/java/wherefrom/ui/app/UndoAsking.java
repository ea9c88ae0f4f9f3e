package wherefrom.ui.app;

import java.util.List;

/** Says what UNDO takes back before it does, where large text leaves no room beside the key. */
final class UndoAsking {
  private UndoAsking() {}

  /** Asks; Back leaves without. */
  static Screen of(Desk desk, String step, Runnable undo) {
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(undo, "Take back: " + step, ""), new Choice<>(() -> {}, "Leave it", ""));
    return new ChoiceScreen<>(desk, "UNDO", ways, Runnable::run);
  }
}
