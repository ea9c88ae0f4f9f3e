package wherefrom.ui.takeapart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.drawing.Look;
import wherefrom.job.PartRecord;
import wherefrom.parts.Action;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.Cue;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.Watching;
import wherefrom.ui.controls.AnswerCard;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.ScreenAnswer;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Ticker;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.PartShape;
import wherefrom.ui.engine.EnginePages;
import wherefrom.ui.engine.WorkIndex;

/** Taking apart: what comes out next and where; for a moment after each scan what came out. */
public final class TakeApartScreen implements Screen, Watching {
  /** How long the panel of a part that came out stands. */
  private static final long PANEL_MILLIS = 3000;

  private static final double SHAPE_MM = 30;
  private static final double SMALL_SHAPE_MM = 22;

  private final ScreenContext context;
  private final TakeApartModel model;
  private final PartActs acts;
  private final AnswerCard card;
  private final EnginePages pages;
  private final EngineView engine;
  private final TagKey tag;
  private final NextView next;
  private final JustOutView justOut;
  private final OutPanel panel;
  private final StackPane view = Panes.grow(new StackPane());
  private Optional<Ticker.Ticking> standing = Optional.empty();

  public TakeApartScreen(ScreenContext context) {
    this.context = context;
    Touch touch = context.touch();
    model = new TakeApartModel(context.getJob(), () -> context.settings().outOrder());
    acts = new PartActs(context, model, this::answer);
    card = new AnswerCard(touch);
    pages =
        new EnginePages(
            context,
            new WorkIndex(
                context, "Which is out?", model::here, this::tapped, this::scannedOnPage));
    engine = pages.view();
    tag = touch.tag("It is out", "or scan its tag", this::press);
    next = new NextView(touch, tag, engine, keys(touch));
    panel = panel(touch);
    justOut = new JustOutView(touch, panel, engine, tag);
  }

  private OutPanel panel(Touch touch) {
    List<TouchKey> keys = new ArrayList<>();
    keys.add(touch.key("Note", acts::note));
    if (!touch.isLarge()) {
      keys.add(touch.key("Photo", acts::photo));
    }
    keys.add(touch.key("Suspect", acts::suspect));
    TouchKey undo =
        touch.key(touch.brief("Undo this", "Undo"), () -> answer(model.act(Action.UNDO)));
    return new OutPanel(touch, undo, keys.toArray(TouchKey[]::new));
  }

  /** Large text leaves room for three: the others stand under More. */
  private Tiles keys(Touch touch) {
    List<TouchKey> keys = new ArrayList<>();
    keys.add(touch.key("Suspect", acts::suspect));
    if (!touch.isLarge()) {
      keys.add(touch.key("Photo", acts::photo));
    }
    keys.add(touch.key("Note", acts::note));
    if (!touch.isLarge()) {
      keys.add(touch.key("Type code", acts::typeCode));
      keys.add(touch.key("Care!", acts::sources));
    }
    keys.add(touch.key("More", acts::more));
    return Tiles.row(context.scale(), keys.toArray(TouchKey[]::new));
  }

  @Override
  public String title() {
    return "Take apart";
  }

  @Override
  public String aside() {
    return model.progress();
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    draw();
  }

  @Override
  public void hidden() {
    context.sounds().hush();
    standing.ifPresent(Ticker.Ticking::end);
  }

  @Override
  public void changed() {
    draw();
  }

  /** The part that comes out next. */
  @Override
  public Optional<Region> helpPicture(double side) {
    return model.next().map(record -> shape(record.part(), side / context.scale().px(1)));
  }

  @Override
  public boolean takes(Action card) {
    return model.takes(card);
  }

  @Override
  public void scan(Scanned scanned) {
    sound(model.scan(scanned.getFound()));
  }

  @Override
  public void ask(String hint) {
    model.ask(hint).ifPresent(context.sounds()::play);
    draw();
  }

  @Override
  public void undo(ScreenContext over) {
    context.attempt(() -> answer(model.act(Action.UNDO)));
  }

  /** From whatever page of the engine. */
  private void tapped(Place place) {
    context.navigator().backTo(this);
    context.attempt(() -> answer(model.tap(place)));
  }

  private void scannedOnPage(Scanned scanned) {
    context.navigator().backTo(this);
    answer(model.scan(scanned.getFound()));
  }

  /** Sounds, says and shows what came of a deed. */
  private void answer(Optional<Cue> cue) {
    sound(cue);
    context.navigator().changed();
  }

  private void sound(Optional<Cue> cue) {
    context.sounds().hush();
    cue.ifPresent(context.sounds()::play);
    String said = model.takeSaid();
    if (!said.isEmpty()) {
      context.say(said);
    }
  }

  private void draw() {
    if (model.answer().isPresent()) {
      view.getChildren().setAll(asked(model.answer().get()));
      return;
    }
    Optional<PartRecord> coming = model.next();
    coming.ifPresent(part -> engine.look(EngineView.sideOf(part.part().kind())));
    pages.show(engine);
    say(coming);
    if (model.out().isPresent()) {
      drawOut(model.out().get(), coming);
    } else {
      drawNext(coming);
    }
  }

  private void say(Optional<PartRecord> coming) {
    if (coming.isEmpty()) {
      tag.setWords("All are out", "go on: inspect");
    } else if (NextView.isNamedOnTag(context.touch())) {
      tag.setWords(model.name(coming.get().part()).words(), "is out, or scan it");
    } else {
      tag.setWords("It is out", "or scan its tag");
    }
  }

  /** The next part is out; where none is left, the next day begins. */
  private void press() {
    if (model.next().isPresent()) {
      answer(model.nextIsOut());
      context.touch().once();
    } else {
      context.navigator().show(ScreenId.BETWEEN);
    }
  }

  private void drawOut(PartRecord out, Optional<PartRecord> coming) {
    panel.show(model.name(out.part()).words(), model.isLast());
    justOut.show(
        coming.map(part -> "Next: " + model.name(part.part()).words()).orElse("All parts are out"),
        coming.map(part -> shape(part.part(), SMALL_SHAPE_MM)).orElseGet(Region::new));
    view.getChildren().setAll(justOut);
    standing.ifPresent(Ticker.Ticking::end);
    standing = Optional.of(Ticker.WINDOW.repeat(PANEL_MILLIS, this::settle));
  }

  private void settle() {
    standing.ifPresent(Ticker.Ticking::end);
    model.settle();
    draw();
    // The finger may be on its way to a key of the panel that has gone.
    context.touch().settle();
  }

  private void drawNext(Optional<PartRecord> coming) {
    if (coming.isEmpty()) {
      next.showNothing("Every part is out. Look at each of them next.");
    } else {
      Part part = coming.get().part();
      next.show(
          model.name(part),
          StepWords.mark(context.state().layout(), part),
          StepWords.way(part),
          shape(part, SHAPE_MM));
    }
    view.getChildren().setAll(next);
  }

  private Region shape(Part part, double mm) {
    return new PartShape(
        context.scale(), context.state().layout(), part.home(), context.scale().px(mm), Look.HERE);
  }

  /** A question or a verdict over all: what to answer it with. */
  private Region asked(ScreenAnswer answer) {
    card.show(answer);
    Touch touch = context.touch();
    TouchKey away = touch.key(model.doubt().isPresent() ? "No: wrong place" : "Go on", this::away);
    if (model.doubt().isEmpty()) {
      return Panes.column(context.scale(), card, away);
    }
    boolean several = !model.doubt().get().over().isEmpty();
    TouchKey yes =
        touch.key(several ? "Yes: all are out" : "Yes: it is out", () -> answer(model.confirm()));
    return Panes.column(context.scale(), card, Tiles.row(context.scale(), away, yes));
  }

  private void away() {
    model.dismiss();
    draw();
  }
}
