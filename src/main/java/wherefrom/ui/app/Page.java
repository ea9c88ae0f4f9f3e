package wherefrom.ui.app;

import java.util.function.Supplier;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Touch;

/**
 * A screen of the usual kind: it has its contents once, and draws anew what may have changed when
 * it comes up and when the job changes under it.
 */
public abstract class Page implements Screen {
  protected final ScreenContext context;
  private final String title;
  private final boolean onJob;
  private Region view = new Region();

  /** A page that works on the open job. */
  protected Page(ScreenContext context, String title) {
    this(context, title, true);
  }

  /**
   * @param onJob whether it works on the open job
   */
  protected Page(ScreenContext context, String title, boolean onJob) {
    this.context = context;
    this.title = title;
    this.onJob = onJob;
  }

  /** Gives the screen its contents; once, while it is made. */
  protected final void lay(Region contents) {
    view = contents;
  }

  /** Draws anew what may have changed. */
  protected void refresh() {}

  protected final Touch touch() {
    return context.touch();
  }

  /** Leads to another screen; Back returns to this one. */
  protected final void open(Supplier<? extends Screen> maker) {
    context.navigator().open(maker);
  }

  /** The tag, its words to be set by {@link TagKey#setWords}. */
  protected final TagKey tag(Runnable act) {
    return context.touch().tag("", "", act);
  }

  /** A further key. */
  protected static KeyRow.Act act(String words, Runnable run) {
    return new KeyRow.Act(words, run);
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public final Region view() {
    return view;
  }

  @Override
  public final boolean onJob() {
    return onJob;
  }

  @Override
  public void shown() {
    refresh();
  }

  @Override
  public void changed() {
    refresh();
  }

  @Override
  public void shrunk() {
    refresh();
  }
}
