package wherefrom.ui.engine;

import java.util.Optional;
import wherefrom.engine.Layout;

/** The layout that is being drawn up, with the one from which it was begun. */
final class DraftLeft {
  private Optional<Layout> begun = Optional.empty();
  private Optional<LayoutDraft> draft = Optional.empty();

  /** Goes on with what was typed over the same layout, or begins anew over another. */
  LayoutDraft of(Layout start) {
    if (draft.isEmpty() || !begun.equals(Optional.of(start))) {
      begun = Optional.of(start);
      draft = Optional.of(new LayoutDraft(start));
    }
    return draft.orElseThrow();
  }
}
