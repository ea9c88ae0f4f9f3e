package wherefrom.ui.home;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.OpenJob;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;

/** What a job's first screen has no room for: copies, papers and settings. */
public final class MoreScreen implements Screen {

  private record Row(String words, String more, Runnable press) {}

  private final Desk desk;
  private final Pager<Row> list;

  MoreScreen(Desk desk) {
    this.desk = desk;
    list =
        Pager.list(
            desk.touch(),
            row -> ListRow.key(desk.touch(), row.words(), List.of(row.more()), row.press()));
  }

  static void open(Desk desk) {
    desk.navigator().open(() -> new MoreScreen(desk));
  }

  private List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    rows.add(new Row("Copy to USB drive", copy(), () -> CopyOut.ask(desk)));
    rows.add(to("Torque cards", "each bolt in its order", ScreenId.TORQUE));
    rows.add(to("Money", "what it has cost and will", ScreenId.MONEY));
    rows.add(to("Settings", "text, look, scanner, camera, sound", ScreenId.SETTINGS));
    return rows;
  }

  private Row to(String words, String more, ScreenId id) {
    return new Row(words, more, () -> desk.navigator().show(id));
  }

  /** How the copy in the second folder stands; what the key does where none is wanted. */
  private String copy() {
    OpenJob job = desk.getJob();
    return desk.copying().words(job.folder(), job.sequence()).orElse("the whole job in one file");
  }

  @Override
  public String title() {
    return "More";
  }

  @Override
  public Region view() {
    return list;
  }

  @Override
  public void shown() {
    list.refill(rows());
  }

  @Override
  public void copied() {
    shown();
  }
}
