package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.inspection.measure.Limit;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.inspection.measure.ResultKeys;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;

/** The limits and sizes typed for this engine, each with where it stands. */
public final class LimitsScreen implements Screen {
  /** What is so, where it stands, and what pressing it does. */
  private record Line(String heading, String words, Runnable act) {}

  private final Desk desk;
  private final Pager<Line> lines;
  private final VBox view;

  public LimitsScreen(Desk desk) {
    this.desk = desk;
    Touch touch = desk.touch();
    lines =
        Pager.list(
            touch, line -> ListRow.key(touch, line.heading(), List.of(line.words()), line.act()));
    view =
        Panes.column(
            desk.scale(),
            touch.text(
                touch.brief(
                    "Wherefrom has no limits of its own. Type those of your engine.",
                    "Type those of your engine.")),
            lines,
            Tiles.row(
                desk.scale(),
                touch.primary("Type a limit", this::limit),
                touch.primary("Type a size when new", this::size)));
  }

  @Override
  public String title() {
    return "Limits";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    List<Line> all = new ArrayList<>();
    for (Limit limit : desk.state().measures().limits()) {
      ReadingPlans.find(limit.plan()).ifPresent(plan -> all.add(line(plan, limit)));
    }
    for (ReadingPlan plan : ReadingPlans.all()) {
      desk.state()
          .measures()
          .findSize(plan.key())
          .ifPresent(
              size ->
                  all.add(
                      new Line(
                          plan.title() + ", size when new: " + size.text(),
                          "press to type it again",
                          () -> LimitFlow.standard(desk, plan))));
    }
    lines.refill(all);
  }

  private Line line(ReadingPlan plan, Limit limit) {
    String result =
        ResultKeys.find(plan, limit.result()).map(ResultKeys.Bounded::words).orElse(limit.result());
    String of = result.equals(plan.title()) ? result : plan.title() + ", " + result;
    return new Line(
        of + ": " + limit.words(),
        "Source: " + limit.source(),
        () -> LimitFlow.bounds(desk, plan, limit.result(), result));
  }

  @Override
  public void changed() {
    shown();
  }

  private void limit() {
    choose("Limit of which reading?", false, plan -> LimitFlow.ask(desk, plan));
  }

  private void size() {
    choose("Size when new of what?", true, plan -> LimitFlow.standard(desk, plan));
  }

  private void choose(String title, boolean sized, java.util.function.Consumer<ReadingPlan> done) {
    MeasureModel model = new MeasureModel(desk.getJob());
    List<Choice<ReadingPlan>> choices =
        model.plans().stream()
            .filter(plan -> !sized || plan.hasStandardSize())
            .map(plan -> new Choice<>(plan, model.name(plan), ""))
            .toList();
    desk.navigator().open(() -> new ChoiceScreen<>(desk, title, choices, done));
  }
}
