package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;

/** The keys of a screen that has many: where large text leaves no room, one key lists the rest. */
public final class Deeds {

  /** Something that can be done. */
  public record Deed(String words, Runnable act) {}

  private Deeds() {}

  /**
   * Keys for all deeds.
   *
   * @param first keys of the screen's own that always stand first
   */
  public static List<Node> keys(Desk desk, List<? extends Node> first, List<Deed> deeds) {
    List<Node> keys = new ArrayList<>(first);
    if (desk.touch().isLarge()) {
      keys.add(desk.touch().primary("What to do…", () -> choose(desk, deeds)));
    } else {
      deeds.forEach(deed -> keys.add(desk.touch().key(deed.words(), deed.act())));
    }
    return keys;
  }

  private static void choose(Desk desk, List<Deed> deeds) {
    List<Choice<Deed>> choices =
        deeds.stream().map(deed -> new Choice<>(deed, deed.words(), "")).toList();
    desk.navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    desk,
                    "What to do",
                    choices,
                    deed -> {
                      desk.navigator().changed();
                      deed.act().run();
                    }));
  }
}
