package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.job.Caution;
import wherefrom.job.puttogether.FirstStart;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.changes.StandingScreen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;

/** Every section is finished: cautions of the first start, and what is to be seen to before it. */
public final class FirstStartScreen extends Page {
  private final Pager<Region> rows;
  private final VBox view;

  public FirstStartScreen(ScreenContext context) {
    super(context, "Before the first start");
    rows = Pager.list(context.touch(), row -> row);
    view =
        Panes.column(context.scale(), rows, context.touch().tag("Open checks", "", this::checks));
    lay(view);
  }

  @Override
  protected void refresh() {
    List<Region> lines = new ArrayList<>();
    for (Caution caution : Caution.atFirstStart()) {
      lines.add(row("Caution", caution.sentence(), caution.source()));
    }
    for (FirstStart.Point point : new FirstStart(context.getJob()).points()) {
      lines.add(row(point.heading(), point.words(), point.source()));
    }
    rows.refill(lines);
  }

  private Region row(String heading, String words, String source) {
    String from = source.isEmpty() ? "" : "Source: " + source + ".";
    return ListRow.plain(context.touch(), heading, List.of(words, from));
  }

  private void checks() {
    context.navigator().open(() -> StandingScreen.openChecks(context));
  }
}
