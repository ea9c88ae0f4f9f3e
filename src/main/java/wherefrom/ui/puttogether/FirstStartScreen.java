package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.Caution;
import wherefrom.job.puttogether.FirstStart;
import wherefrom.job.puttogether.StartList;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.changes.StandingScreen;

/** Cautions of the first start, what the job shows as open, and the list that is ticked. */
public final class FirstStartScreen extends ListPage {
  private final StartList list;

  public FirstStartScreen(ScreenContext context) {
    super(context, "Before the first start");
    list = new StartList(context.getJob());
    layOut(touch().tag("Open checks", "", () -> open(() -> StandingScreen.openChecks(context))));
  }

  @Override
  public String aside() {
    return list.countOpen() + " to tick";
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    for (Caution caution : Caution.atFirstStart()) {
      rows.add(row("Caution", caution.sentence(), caution.source()));
    }
    for (FirstStart.Point point : new FirstStart(context.getJob()).points()) {
      if (point.open()) {
        rows.add(row(point.heading(), point.words(), point.source()));
      }
    }
    list.lines().forEach(line -> rows.add(line(line)));
    return rows;
  }

  private Region row(String heading, String words, String source) {
    return told(heading, words, source.isEmpty() ? "" : "Source: " + source + ".");
  }

  private Region line(StartList.Line line) {
    String state = line.ticked() ? "Done. " + line.words() : "To do. " + line.how();
    return key(line.title(), state.strip(), () -> press(line));
  }

  /** A rocker is ticked at once; a line that is done is open again. */
  private void press(StartList.Line line) {
    if (line.ticked() || line.isRocker()) {
      keep(line, "", !line.ticked());
    } else {
      String ask = line.title() + ": which, or what was seen";
      open(() -> new TextEntryScreen(context, ask, "", words -> keep(line, words, true)));
    }
  }

  private void keep(StartList.Line line, String words, boolean done) {
    context.attempt(() -> list.tick(line.key(), words, done));
    context.navigator().changed();
  }
}
