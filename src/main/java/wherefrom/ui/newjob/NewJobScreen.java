package wherefrom.ui.newjob;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.drawing.View;
import wherefrom.engine.Layout;
import wherefrom.job.OpenJob;
import wherefrom.job.print.Unprintable;
import wherefrom.quantity.UnitSystem;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.AskKey;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.engine.EngineScreen;

/** Begins a job. */
public final class NewJobScreen extends Page {

  private final NewJobModel model;
  private final AskKey name;
  private final AskKey layout;
  private final AskKey kinds;
  private final AskKey units;
  private final TagKey tag;
  private final StackPane view = Panes.grow(new StackPane());
  private View side = View.ABOVE;

  public NewJobScreen(ScreenContext context) {
    super(context, "New job", false);
    model = context.kept().keep(NewJobModel.class, () -> fresh(context));
    Touch touch = context.touch();
    name = AskKey.key(touch, "Name", this::name);
    layout = AskKey.key(touch, "Engine", this::layout);
    kinds = AskKey.key(touch, "Tags for", this::kinds);
    units = AskKey.key(touch, "Units", this::units);
    tag = touch.tag(touch.brief("Begin the job", "Begin"), "", this::begin);
    lay(view);
  }

  private static NewJobModel fresh(ScreenContext context) {
    Clock clock = context.services().clock();
    LocalDate today = LocalDate.ofInstant(clock.instant(), clock.getZone());
    return new NewJobModel(context.settings().units(), today);
  }

  /** What was typed is kept whichever way the keys are left. */
  private void name() {
    context
        .navigator()
        .open(
            () ->
                TextEntryScreen.keeping(
                    context, "A name you will know the job by", model.typed(), this::named));
  }

  private void named(String typed) {
    model.name(typed);
    Unprintable.warning(context.services().printer(), List.of(typed)).ifPresent(context::say);
    refill();
  }

  private void layout() {
    List<Choice<Layout>> choices =
        NewJobModel.layouts(context.shelf()).stream()
            .map(each -> new Choice<>(each, each.title(), words(each)))
            .toList();
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context, "Engine layout", Choice.now(choices, model.layout()), this::laidOut));
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
    context.navigator().open(() -> new EngineScreen(context, start, this::laidOut));
  }

  private void kinds() {
    context.navigator().open(() -> new KindsScreen(context, model));
  }

  private void units() {
    model.turnUnits();
    refill();
  }

  private void begin() {
    context.attempt(
        () -> {
          OpenJob begun = context.shelf().create(model.begun());
          context.kept().drop(NewJobModel.class);
          context.open(begun);
        });
  }

  /** The drawing follows each choice. */
  private void refill() {
    name.say(model.name());
    layout.say(model.layout().title());
    kinds.say(model.tags());
    units.say(unitWords());
    tag.setWords(
        context.touch().brief("Begin the job", "Begin"),
        context.touch().brief("each part gets a tag", ""));
    Touch touch = context.touch();
    EngineView engine = EngineView.shown(touch, model.layout(), model.kinds());
    engine.look(side);
    TouchKey turn = touch.key("Turn over", () -> turn(engine));
    view.getChildren().setAll(new NewJobView(touch, engine, turn, forms(touch), tag));
  }

  private List<Region> rows(Touch touch) {
    TouchKey edit = touch.key("Edit engine", this::edit);
    return List.of(name, layout, kinds, Tiles.row(context.scale(), units, edit));
  }

  /** Large text may leave room for two or three rows: what has none stands on a page of its own. */
  private List<List<Region>> forms(Touch touch) {
    if (!touch.isLarge()) {
      return List.of(rows(touch));
    }
    AskKey tags = AskKey.key(touch, "Tags for", this::kinds);
    tags.say(model.tags());
    TouchKey few = touch.key(model.briefTags(), this::kinds);
    return List.of(
        rows(touch),
        List.of(named(touch), tags, others(touch, this::moreButTags)),
        List.of(named(touch), few, others(touch, this::moreButTags)),
        List.of(named(touch), others(touch, this::more)));
  }

  private AskKey named(Touch touch) {
    AskKey named = AskKey.key(touch, "Name", this::name);
    named.say(model.name());
    return named;
  }

  private Region others(Touch touch, Runnable more) {
    return Tiles.row(context.scale(), touch.key("Engine", this::layout), touch.key("More", more));
  }

  private void more() {
    choose(
        List.of(new Choice<>(this::kinds, "Tags for", model.tags()), unitChoice(), editChoice()));
  }

  private void moreButTags() {
    choose(List.of(unitChoice(), editChoice()));
  }

  private Choice<Runnable> unitChoice() {
    return new Choice<>(this::units, "Units", unitWords());
  }

  private Choice<Runnable> editChoice() {
    return new Choice<>(this::edit, "Edit engine", model.layout().title());
  }

  private void choose(List<Choice<Runnable>> more) {
    context.navigator().open(() -> new ChoiceScreen<>(context, "More", more, Runnable::run));
  }

  private String unitWords() {
    return model.units() == UnitSystem.INCH ? "inches" : "millimeters";
  }

  private void turn(EngineView engine) {
    engine.turnOver();
    side = engine.side();
  }

  @Override
  protected void refresh() {
    refill();
  }
}
