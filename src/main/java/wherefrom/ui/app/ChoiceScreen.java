package wherefrom.ui.app;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Touch;

/** Asks for one of several things, each a large key. */
public class ChoiceScreen<T> extends Page {
  private final Consumer<T> done;

  /**
   * @param done is given what was chosen; Back leaves without
   */
  public ChoiceScreen(
      ScreenContext context, String title, List<Choice<T>> choices, Consumer<T> done) {
    super(context, title, false);
    Touch touch = context.touch();
    boolean told = choices.stream().anyMatch(choice -> !choice.more().isEmpty());
    Pager<Choice<T>> list =
        Pager.list(touch, choice -> told ? row(context, choice) : key(context, choice));
    list.setItems(choices);
    this.done = done;
    lay(list);
  }

  private Region key(ScreenContext context, Choice<T> choice) {
    return context.touch().key(choice.words(), () -> choose(choice)).left().select(choice.now());
  }

  /** Where more is said of one of them, all have their names in the same letters. */
  private Region row(ScreenContext context, Choice<T> choice) {
    List<String> more = choice.more().isEmpty() ? List.of() : List.of(choice.more());
    return ListRow.key(context.touch(), choice.words(), more, () -> choose(choice))
        .select(choice.now());
  }

  /** Where what was chosen cannot be kept it is asked for again. */
  private void choose(Choice<T> choice) {
    context.navigator().back();
    if (!context.succeeds(() -> done.accept(choice.value()))) {
      context.navigator().open(() -> this);
      return;
    }
    // What it came back to was drawn before the choice was handed over.
    context.navigator().changed();
  }
}
