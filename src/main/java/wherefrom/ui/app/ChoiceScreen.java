package wherefrom.ui.app;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Touch;

/** Asks for one of several things, each a large key. */
public final class ChoiceScreen<T> implements Screen {
  private final String title;
  private final Pager<Choice<T>> list;

  /**
   * @param done is given what was chosen; Back leaves without
   */
  public ChoiceScreen(Desk desk, String title, List<Choice<T>> choices, Consumer<T> done) {
    this.title = title;
    Touch touch = desk.touch();
    list =
        Pager.list(
            touch,
            choice ->
                touch
                    .key(
                        choice.more().isEmpty()
                            ? choice.words()
                            : choice.words() + "\n" + choice.more(),
                        () -> {
                          desk.navigator().back();
                          done.accept(choice.value());
                        })
                    .left());
    list.setItems(choices);
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public Region view() {
    return list;
  }

  @Override
  public boolean onJob() {
    return false;
  }
}
