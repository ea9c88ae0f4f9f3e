package wherefrom.ui.app;

import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;

/** What of long work failed, and why: one list, after the rest is done. */
public final class FailedScreen implements Screen {

  /** One thing that failed, and the sentence of it. */
  public record Failed(String what, String why) {}

  private final String title;
  private final Pager<Failed> list;

  /**
   * @param all how many there were with those that went well
   */
  public FailedScreen(Desk desk, List<Failed> failed, int all) {
    title = failed.size() + " of " + all + " failed; the others are done";
    list = Pager.list(desk.touch(), one -> ListRow.told(desk.touch(), one.what(), one.why()));
    list.setItems(failed);
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
