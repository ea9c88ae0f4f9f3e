package wherefrom.parts;

import java.util.Arrays;
import java.util.Optional;

/** What an action card does; the cards hang by the bench and serve every job. */
public enum Action {
  UNDO(1, "one step back"),
  SKIP(2, "go back"),
  NEXT(3, "go on"),
  REPEAT(4, "say it again"),
  HELP(5, "what now?"),
  YES(6, "on purpose");

  private final int item;
  private final String words;

  Action(int item, String words) {
    this.item = item;
    this.words = words;
  }

  /** What it does, in words. */
  public String words() {
    return words;
  }

  /** The code on the card: engine 0, issue 1. */
  public TagCode code() {
    return new TagCode(TagType.ACTION_CARD, 0, item, 1);
  }

  /** The action with this item number. */
  public static Optional<Action> find(int item) {
    return Arrays.stream(values()).filter(action -> action.item == item).findFirst();
  }
}
