package wherefrom.ui.home;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.Sign;
import wherefrom.drawing.View;
import wherefrom.job.OpenJob;
import wherefrom.job.shelf.JobDay;
import wherefrom.job.shelf.NextDeed;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.RailKey;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.StandardRail;
import wherefrom.ui.controls.Icon;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.PartShape;
import wherefrom.ui.drawn.PartStates;
import wherefrom.ui.drawn.PlaceCounts;
import wherefrom.ui.drawn.SignMark;
import wherefrom.ui.engine.PartIndex;
import wherefrom.ui.puttogether.HeldScreen;

/** The open job's first screen: the one thing to do, wired to its place; the five days. */
public final class JobHomeScreen extends Page implements Scannable {
  private static final double SHAPE_MM = 15;
  private static final double STOP_MM = 15;

  private final EngineView engine;
  private final PlaceCounts counts;
  private final TagKey tag;
  private final DaysRow days;
  private final HomeView view;
  private Optional<NextDeed> next = Optional.empty();
  private boolean troubled;

  public JobHomeScreen(ScreenContext context) {
    super(context, "");
    Touch touch = context.touch();
    engine = PartIndex.pages(context).view();
    engine.unlettered();
    counts = new PlaceCounts(touch);
    tag = touch.tag("Go on", "", this::goOn);
    days = new DaysRow(touch, this::to);
    TouchKey turn = touch.key("Turn over", this::turnOver);
    view = new HomeView(touch, engine, counts, turn, tag, days);
    lay(view);
  }

  private JobHomeModel model() {
    return new JobHomeModel(
        context.getJob(), context.settings().outOrder(), context.touch().isLarge());
  }

  @Override
  public List<RailKey> rail(StandardRail standard) {
    List<RailKey> keys = new ArrayList<>();
    standard.back().ifPresent(back -> keys.add(new RailKey(Icon.JOBS, "Jobs", back.act())));
    standard.bench().ifPresent(keys::add);
    keys.add(new RailKey(Icon.MORE, "More", () -> MoreScreen.open(context)));
    if (context.touch().isLarge()) {
      keys.add(
          new RailKey(Icon.ENGINE, "Engine", () -> PartIndex.pages(context).open(engine.side())));
    }
    return keys;
  }

  @Override
  public String title() {
    return context.job().map(job -> job.state().name()).orElse("");
  }

  /** A copy that could not be made is told before all else. */
  @Override
  public String aside() {
    return context.job().map(this::aside).orElse("");
  }

  private String aside(OpenJob job) {
    return context.copying().isTroubled(job.folder(), job.sequence())
        ? "not copied: see More"
        : model().aside(context.services().clock());
  }

  @Override
  public void shown() {
    tellOfCopy();
    super.shown();
  }

  private void show(JobHomeModel model) {
    next = Optional.of(model.deed().next());
    side(model).ifPresent(engine::look);
    draw(model);
  }

  /** The side that the work is on. */
  private Optional<View> side(JobHomeModel model) {
    return model.place().stream().findFirst().map(place -> EngineView.sideOf(place.kind()));
  }

  private void draw(JobHomeModel model) {
    JobHomeModel.Deed deed = model.deed();
    tag.setWords(deed.words(), deed.more());
    dress(deed);
    counts.show(model.counts());
    days.show(model.standing());
    if (deed.isStop()) {
      engine.stop(PartStates.of(context.state()), model.place(), Set.of());
    } else {
      engine.show(PartStates.of(context.state()), model.here());
    }
    view.lead(deed.next().place());
  }

  /** The part's shape behind the words; the octagon before them where a stop waits. */
  private void dress(JobHomeModel.Deed deed) {
    Scale scale = context.scale();
    tag.clear();
    tag.getStyleClass().remove("stop");
    if (deed.isStop()) {
      tag.getStyleClass().add("stop");
      tag.before(new SignMark(scale, Sign.OTHER, scale.px(STOP_MM)));
      return;
    }
    deed.next()
        .place()
        .map(
            place ->
                new PartShape(
                    scale, context.state().layout(), place, scale.px(SHAPE_MM), DrawnAs.IN))
        .ifPresent(tag::after);
  }

  private void turnOver() {
    engine.turnOver();
    view.requestLayout();
  }

  private void goOn() {
    if (next.filter(deed -> deed.kind() == NextDeed.Kind.HELD).isPresent()) {
      context.navigator().open(() -> new HeldScreen(context));
      return;
    }
    next.ifPresent(
        deed ->
            context
                .navigator()
                .show(
                    switch (deed.kind()) {
                      case PRINT_TAGS -> ScreenId.PRINT_TAGS;
                      case TAKE_OUT -> ScreenId.TAKE_APART;
                      case DECIDE -> ScreenId.BETWEEN;
                      case RUN_IN, RUN_IN_AGAIN -> ScreenId.RUN_IN;
                      case SERVICE, IN_SERVICE -> ScreenId.SERVICE;
                      case SOLVE_STOP, FIT, HELD, LOOK_AGAIN, CLOSE_SECTIONS, FIRST_START ->
                          ScreenId.PUT_TOGETHER;
                    }));
  }

  private void to(JobDay day) {
    context
        .navigator()
        .show(
            switch (day) {
              case TAGS -> ScreenId.PRINT_TAGS;
              case APART -> ScreenId.TAKE_APART;
              case INSPECT -> ScreenId.BETWEEN;
              case TOGETHER -> ScreenId.PUT_TOGETHER;
              case RECORD -> ScreenId.BUILD_RECORD;
            });
  }

  @Override
  public void scan(Scanned scanned) {
    HomeScan.take(context, scanned, next);
  }

  /** Says in full how the copy stands while it cannot be made, and once when it can again. */
  private void tellOfCopy() {
    OpenJob job = context.getJob();
    boolean now = context.copying().isTroubled(job.folder(), job.sequence());
    if (now || troubled) {
      context.copying().words(job.folder(), job.sequence()).ifPresent(context::say);
    }
    troubled = now;
  }

  @Override
  public void copied() {
    tellOfCopy();
    context.navigator().changed();
  }

  @Override
  protected void refresh() {
    show(model());
  }
}
