package wherefrom.ui.newjob;

import java.util.List;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.engine.Layout;
import wherefrom.job.print.Unprintable;
import wherefrom.quantity.UnitSystem;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.engine.DrawnScreen;
import wherefrom.ui.engine.EngineScreen;

/** Begins a job. */
public final class NewJobScreen implements Screen {

  private record Line(String heading, String now, Runnable press) {}

  private final Desk desk;
  private final NewJobModel model;
  private final Pager<Line> list;
  private final VBox view;

  public NewJobScreen(Desk desk) {
    this.desk = desk;
    model = new NewJobModel(desk.settings().units());
    Touch touch = desk.touch();
    list =
        Pager.list(
            touch, line -> ListRow.key(touch, line.heading(), List.of(line.now()), line.press()));
    view =
        Panes.column(
            desk.scale(),
            list,
            Tiles.row(
                desk.scale(),
                touch.key("See it drawn", this::draw),
                touch.key("Change the layout", this::edit),
                touch.primary("Begin the job", this::begin)));
  }

  private List<Line> lines() {
    String units = model.units() == UnitSystem.INCH ? "inches" : "millimeters";
    return List.of(
        new Line("Name", model.name().isEmpty() ? "press to type one" : model.name(), this::name),
        new Line("Engine layout", model.layout().title(), this::layout),
        new Line("Parts to track", model.count() + " parts, each with a tag", this::kinds),
        new Line("Units", units, this::units));
  }

  private void name() {
    desk.navigator()
        .open(
            () ->
                new TextEntryScreen(
                    desk, "A name you will know the job by", model.name(), this::named));
  }

  private void named(String name) {
    model.name(name);
    Unprintable.warning(desk.equipment().printer(), List.of(name)).ifPresent(desk::say);
    refill();
  }

  private void layout() {
    List<Choice<Layout>> choices =
        NewJobModel.layouts(desk.shelf()).stream()
            .map(layout -> new Choice<>(layout, layout.title(), words(layout)))
            .toList();
    desk.navigator().open(() -> new ChoiceScreen<>(desk, "Engine layout", choices, this::laidOut));
  }

  private static String words(Layout layout) {
    return layout.cylinders().size()
        + " cylinders, "
        + layout.mains()
        + " main bearings; firing order "
        + String.join("-", layout.firingOrder().stream().map(String::valueOf).toList());
  }

  private void laidOut(Layout layout) {
    model.layout(layout);
    refill();
  }

  private void edit() {
    Layout start = model.layout();
    desk.navigator().open(() -> new EngineScreen(desk, start, this::laidOut));
  }

  private void draw() {
    Layout layout = model.layout();
    desk.navigator().open(() -> new DrawnScreen(desk, layout));
  }

  private void kinds() {
    desk.navigator().open(() -> new KindsScreen(desk, model));
  }

  private void units() {
    model.turnUnits();
    refill();
  }

  private void begin() {
    desk.attempt(() -> desk.open(desk.shelf().create(model.begun())));
  }

  private void refill() {
    list.refill(lines());
  }

  @Override
  public String title() {
    return "New job";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    refill();
  }

  @Override
  public boolean onJob() {
    return false;
  }
}
