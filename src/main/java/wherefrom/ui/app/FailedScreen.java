package wherefrom.ui.app;

import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.ListRow;

/** What of long work failed, and why: one list, after the rest is done. */
public final class FailedScreen extends ListPage {

  /** One thing that failed, and the sentence of it. */
  public record Failed(String what, String why) {}

  private final List<Failed> failed;

  /**
   * @param all how many there were with those that went well
   */
  public FailedScreen(ScreenContext context, List<Failed> failed, int all) {
    super(
        context,
        failed.size()
            + " of "
            + all
            + context.touch().brief(" failed; the others are done", " failed"),
        false);
    this.failed = List.copyOf(failed);
  }

  @Override
  protected List<Region> rows() {
    return failed.stream()
        .<Region>map(one -> ListRow.told(touch(), one.what(), one.why()))
        .toList();
  }
}
