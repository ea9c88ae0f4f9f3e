package wherefrom.ui.inspect;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.inspection.Check;
import wherefrom.inspection.Printed;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;

/** All the words of a quick test: how, where, and what is seen in print of other engines. */
public final class CheckWordsScreen implements Screen {
  private record Line(String heading, String words) {}

  private final Check check;
  private final Pager<Line> lines;

  public CheckWordsScreen(Desk desk, Check check) {
    this.check = check;
    lines =
        Pager.list(
            desk.touch(),
            line -> ListRow.plain(desk.touch(), line.heading(), List.of(line.words())));
    List<Line> all = new ArrayList<>();
    all.add(new Line("How", check.how()));
    all.add(new Line("Where", check.where()));
    all.add(new Line("Source", check.source()));
    for (Printed printed : check.printed()) {
      all.add(new Line("Printed figures", printed.text()));
    }
    all.add(
        new Line(
            "What counts",
            "Service information for your exact engine outranks this tool. So does a"
                + " qualified machinist."));
    lines.setItems(all);
  }

  @Override
  public String title() {
    return check.title();
  }

  @Override
  public Region view() {
    return lines;
  }
}
