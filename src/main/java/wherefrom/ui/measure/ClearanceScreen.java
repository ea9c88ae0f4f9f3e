package wherefrom.ui.measure;

import java.util.List;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.BearingClearance;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;

/** The oil clearance of every bearing, as far as its pieces are measured. */
public final class ClearanceScreen implements Screen {
  private final Desk desk;
  private final MeasureModel model;
  private final Pager<BearingClearance> lines;
  private final VBox view;

  public ClearanceScreen(Desk desk) {
    this.desk = desk;
    Touch touch = desk.touch();
    model = new MeasureModel(desk.getJob());
    lines = Pager.list(touch, this::row);
    view =
        Panes.column(
            desk.scale(), lines, Tiles.row(desk.scale(), touch.key("Type the limit", this::limit)));
  }

  private Region row(BearingClearance bearing) {
    String how = bearing.clearance().isPresent() ? "Worked out: " + bearing.said() + "." : "";
    return ListRow.plain(
        desk.touch(),
        Words.capital(bearing.words()),
        List.of(bearing.sentence(), how, source(bearing)));
  }

  private static String source(BearingClearance bearing) {
    return bearing.judgement().map(judged -> "Source: " + judged.limit().source()).orElse("");
  }

  @Override
  public String title() {
    return "Oil clearance";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    lines.refill(model.clearances());
  }

  @Override
  public void changed() {
    shown();
  }

  private void limit() {
    List<Choice<ReadingPlan>> choices =
        List.of(
            new Choice<>(ReadingPlans.find("main-journal").orElseThrow(), "Main bearings", ""),
            new Choice<>(ReadingPlans.find("rod-journal").orElseThrow(), "Rod bearings", ""));
    desk.navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    desk,
                    "Limit of which clearance?",
                    choices,
                    plan -> LimitFlow.bounds(desk, plan, "clearance", "oil clearance")));
  }
}
