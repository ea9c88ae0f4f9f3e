package wherefrom.ui.puttogether;

import java.util.Optional;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;
import wherefrom.job.LoggedEntry;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.puttogether.ToFit;
import wherefrom.parts.Action;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.TagType;
import wherefrom.rules.Cue;
import wherefrom.ui.app.AsksForTag;
import wherefrom.ui.app.Help;
import wherefrom.ui.app.NamesPlaces;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TypedCode;
import wherefrom.ui.app.Watching;
import wherefrom.ui.app.WholeGlass;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.engine.EnginePages;
import wherefrom.ui.engine.WorkIndex;
import wherefrom.ui.photos.PhotosOf;

/** Putting together: a part and its place, by scan or tap; a stop takes the whole screen. */
public final class PutTogetherScreen implements WholeGlass, Watching, NamesPlaces, AsksForTag {
  private final ScreenContext context;
  private final PutTogetherModel model;
  private final BesideTogether beside;
  private final EngineView engine;
  private final WorkView work;
  private final StopWays ways;
  private final StopView stop;
  private final RightView right;
  private final StackPane view = Panes.grow(new StackPane());

  public PutTogetherScreen(ScreenContext context) {
    this.context = context;
    model = new PutTogetherModel(context.getJob());
    beside = new BesideTogether(context);
    EnginePages pages =
        new EnginePages(
            context,
            new WorkIndex(
                context,
                () -> model.dueHalves().question(),
                model::here,
                this::tap,
                this::scannedOnPage));
    engine = pages.view();
    WorkDeeds deeds = new WorkDeeds(context, model, beside, this);
    work = new WorkView(context.touch(), pages, new WorkKeys(context.touch(), deeds), engine);
    right = new RightView(context.touch(), model, new RightKeys(context, this, deeds));
    ways =
        new StopWays(
            context, model, this::answer, asked -> TypedCode.ask(context, asked, this::scan));
    stop = new StopView(context.touch(), ways, context::corner);
  }

  @Override
  public String aside() {
    int left = new ToFit(context.getJob()).places().size();
    return (left == 0 ? "none" : left) + " to\u00a0fit";
  }

  @Override
  public String title() {
    return "Put together";
  }

  @Override
  public boolean whole() {
    return model.stop().isPresent();
  }

  @Override
  public Object standsFor() {
    return model.stop();
  }

  @Override
  public boolean escape() {
    if (whole()) {
      ways.more();
    }
    return whole();
  }

  @Override
  public void message(String sentence) {
    stop.message(sentence);
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    if (ways.isBack()) {
      model.dropReason();
      answer(model.leave(StopModel::again));
      return;
    }
    model.shown();
    if (model.stop().isPresent()) {
      context.superseded(); // What was said last is about something else.
      context.sounds().play(Cue.STOP);
    }
    draw();
  }

  @Override
  public void hidden() {
    context.sounds().hush();
  }

  @Override
  public void changed() {
    draw();
  }

  @Override
  public void shrunk() {
    draw();
  }

  @Override
  public Help help() {
    return new TogetherHelp(model, context.scale()).help();
  }

  @Override
  public Optional<Region> helpPicture(double side) {
    return new TogetherHelp(model, context.scale()).picture(side);
  }

  @Override
  public boolean takes(Action card) {
    return TakenCards.takes(model, card);
  }

  @Override
  public boolean expects(TagType type) {
    return type == TagType.PLACE_CARD && asksForPlace();
  }

  /** Whether the next thing to name is a place: its part is in the hand, or its place was taken. */
  private boolean asksForPlace() {
    return model.stop().isPresent()
        ? model.stopped().first().isPlace()
        : model.halves().filter(Halves::hasPart).isPresent();
  }

  @Override
  public void askFor(Part part) {
    model.askFor(part);
  }

  @Override
  public void begin() {
    model.layStopAside();
  }

  @Override
  public void scan(Scanned scanned) {
    if (scanned.isTyped() && CopiedCode.isShown(model, scanned.getFound())) {
      CopiedCode.ask(context, () -> take(scanned));
    } else {
      take(scanned);
    }
  }

  private void take(Scanned scanned) {
    if (!beside.take(scanned.getFound(), model)) {
      sound(model.scan(scanned.getFound()));
      beside.tell(model);
    }
  }

  @Override
  public void ask(String hint) {
    model.ask(hint).ifPresent(context.sounds()::play);
    draw();
  }

  @Override
  public Optional<LoggedEntry> undone(ScreenContext over) {
    return model.undone().step();
  }

  @Override
  public String undoes(ScreenContext over) {
    return model.undone().words();
  }

  @Override
  public void undo(ScreenContext over) {
    answer(model.act(Action.UNDO));
  }

  void turned() {
    answer(model.leave(PutTogether::turned));
  }

  void hold() {
    answer(model.hold());
  }

  void moveOn() {
    model.moveOn();
    draw();
  }

  @Override
  public boolean takePlace(String typed) {
    Optional<Spot> spot =
        Spots.findTyped(typed)
            .filter(at -> model.stop().isEmpty())
            .filter(at -> context.state().places().stream().anyMatch(it -> it.spot().equals(at)));
    spot.ifPresent(at -> answer(model.leave(it -> it.tap(at))));
    return spot.isPresent();
  }

  /** A place was tapped, on the drawing or on one of its pages. */
  private void tap(Place place) {
    context.navigator().backTo(this);
    answer(model.tap(place));
  }

  private void scannedOnPage(Scanned scanned) {
    context.navigator().backTo(this);
    scan(scanned);
    context.navigator().changed();
  }

  /** Sounds and shows what came of a deed. */
  void answer(Optional<Cue> cue) {
    sound(cue);
    context.navigator().changed();
  }

  private void sound(Optional<Cue> cue) {
    if (model.stop().isEmpty()) {
      context.sounds().hush();
    }
    cue.ifPresent(context.sounds()::play);
    if (!model.trouble().isEmpty()) {
      context.say(model.trouble());
    }
  }

  private void draw() {
    if (model.stop().isPresent()) {
      stop.show(model);
      view.getChildren().setAll(stop);
      return;
    }
    Optional<RightModel> fitted = model.right();
    if (fitted.isPresent()) {
      right.show(model, fitted.get());
      view.getChildren().setAll(right);
    } else {
      work.show(model);
      view.getChildren().setAll(work);
    }
  }

  /** A part without a tag is known: by what a person says of it. */
  void known(Part part) {
    context.navigator().backTo(this);
    answer(model.leave(together -> together.takeUntagged(part)));
  }

  /** The place in question, where there is a photograph of it as it was. */
  Optional<Place> photographed() {
    return model
        .right()
        .map(RightModel::place)
        .or(() -> model.halves().flatMap(Halves::here))
        .filter(place -> PhotosOf.isAny(context.state(), place));
  }

  void turnOver() {
    engine.turnOver();
  }

  void photo() {
    photographed().ifPresent(place -> PhotosOf.open(context, place));
  }
}
