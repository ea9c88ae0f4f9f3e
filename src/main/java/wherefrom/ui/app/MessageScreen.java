package wherefrom.ui.app;

import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;

/** A message that is too long for its place above the screen. */
public final class MessageScreen implements Screen {
  private final VBox view;

  public MessageScreen(Desk desk, String sentence) {
    Pager<Region> page = Pager.list(desk.touch(), row -> row);
    page.setItems(java.util.List.of(ListRow.told(desk.touch(), "", sentence)));
    view = Panes.column(desk.scale(), page);
  }

  @Override
  public String title() {
    return "Message";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public boolean onJob() {
    return false;
  }
}
