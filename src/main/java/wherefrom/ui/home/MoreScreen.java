package wherefrom.ui.home;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.OpenJob;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.phone.PhonesIn;
import wherefrom.ui.puttogether.NoTag;

/** What a job's first screen has no room for: copies, papers and settings. */
public final class MoreScreen extends Page {

  private static final double LARGEST = 2;

  private record Row(String words, String more, Runnable press) {}

  private final Pager<Row> list;

  MoreScreen(ScreenContext context) {
    super(context, "More");
    list =
        Pager.list(
            context.touch(),
            row -> ListRow.key(context.touch(), row.words(), List.of(row.more()), row.press()));
    lay(list);
  }

  static void open(ScreenContext context) {
    context.navigator().open(() -> new MoreScreen(context));
  }

  private List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    rows.add(new Row("Copy to USB drive", copy(), () -> CopyOut.ask(context)));
    rows.add(to("Bags and big parts", "what is off, still to fit", ScreenId.BAGS));
    rows.add(new Row("No tag on a part", told("what tells which it is"), () -> NoTag.ask(context)));
    rows.add(to("Before teardown", "compression, leaks, oil pressure, vacuum", ScreenId.BEFORE));
    rows.add(to("Run-in and service", "the clock, hours and miles, what is due", ScreenId.SERVICE));
    rows.add(to("Torque cards", "each bolt in its order", ScreenId.TORQUE));
    rows.add(to("Money", "what it has cost and will", ScreenId.MONEY));
    rows.add(to("Add a phone", PhonesIn.of(context).words(), ScreenId.PHONES));
    rows.add(to("Settings", "text, look, scanner, camera, sound", ScreenId.SETTINGS));
    return rows;
  }

  private Row to(String words, String more, ScreenId id) {
    return new Row(words, told(more), () -> context.navigator().show(id));
  }

  /** The largest letters would have two rows a page with it: the names say enough. */
  private String told(String more) {
    return context.scale().textFactor() < LARGEST ? more : "";
  }

  /** How the copy in the second folder stands; what the key does where none is wanted. */
  private String copy() {
    OpenJob job = context.getJob();
    return context
        .copying()
        .words(job.folder(), job.sequence())
        .orElse(told("the whole job in one file"));
  }

  @Override
  protected void refresh() {
    list.refill(rows());
  }

  @Override
  public void copied() {
    shown();
  }
}
