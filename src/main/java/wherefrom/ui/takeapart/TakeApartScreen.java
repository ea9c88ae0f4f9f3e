package wherefrom.ui.takeapart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.drawing.Look;
import wherefrom.job.PartRecord;
import wherefrom.parts.Action;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.Cue;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.Watching;
import wherefrom.ui.controls.AnswerCard;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.ScreenAnswer;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.PartShape;
import wherefrom.ui.engine.EnginePages;
import wherefrom.ui.engine.WorkIndex;

/** Taking apart: what comes out next and where; for a moment after each scan what came out. */
public final class TakeApartScreen extends Page implements Watching {
  /** How long the panel of a part that came out stands. */

  private static final double SHAPE_MM = 30;

  private final TakeApartModel model;
  private final PartActs acts;
  private final AnswerCard card;
  private final EnginePages pages;
  private final EngineView engine;
  private final TagKey tag;
  private final NextView next;
  private final List<TouchKey> about = new ArrayList<>();
  private final StackPane view = Panes.grow(new StackPane());

  public TakeApartScreen(ScreenContext context) {
    super(context, "Take apart");
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
    next = new NextView(touch, tag, engine, keys(touch, List.of(), keyed()), named(touch));
    lay(view);
  }

  /** What is done with a part, in the order of the keys. */
  private Map<String, Runnable> keyed() {
    Map<String, Runnable> deeds = new LinkedHashMap<>();
    deeds.put("Suspect", acts::suspect);
    deeds.put("Photo", acts::photo);
    deeds.put("Note", acts::note);
    return deeds;
  }

  /** Those that say which part they mean. */
  private Tiles named(Touch touch) {
    keyed().forEach((words, deed) -> about.add(touch.key(words, deed)));
    return keys(touch, about, Map.of());
  }

  /** Large text leaves room for four: the others stand under More. */
  private Tiles keys(Touch touch, List<TouchKey> made, Map<String, Runnable> more) {
    List<TouchKey> keys = new ArrayList<>(made);
    more.forEach((words, deed) -> keys.add(touch.key(words, deed)));
    if (!touch.isLarge()) {
      keys.add(touch.key("Type code", acts::typeCode));
      keys.add(touch.key("Care!", acts::sources));
    }
    keys.add(touch.key("More", acts::more));
    return Tiles.row(context.scale(), keys.toArray(TouchKey[]::new));
  }

  /** The keys say which part they mean: the one that came out last, else the next. */
  private void name() {
    String part = model.subject().map(one -> ": " + model.name(one).brief()).orElse("");
    List<String> words = List.copyOf(keyed().keySet());
    for (int at = 0; at < words.size(); at++) {
      about.get(at).setWords(words.get(at) + part);
    }
  }

  @Override
  public String aside() {
    return model.progress();
  }

  @Override
  public void hidden() {
    context.sounds().hush();
  }

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
    refresh();
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

  @Override
  protected void refresh() {
    if (model.answer().isPresent()) {
      view.getChildren().setAll(asked(model.answer().get()));
      return;
    }
    Optional<PartRecord> coming = model.next();
    coming.ifPresent(part -> engine.look(EngineView.sideOf(part.part().kind())));
    pages.show(engine);
    say(coming);
    name();
    next.out(model.out().map(out -> model.name(out.part()).words()));
    drawNext(coming);
  }

  private void say(Optional<PartRecord> coming) {
    if (coming.isEmpty()) {
      tag.setWords("All are out", "go on: inspect");
    } else {
      tag.setWords("It is out: " + model.name(coming.get().part()).inLine(), first(coming.get()));
    }
  }

  /** What to mark before the next part moves, while the place of that tells what came out last. */
  private String first(PartRecord coming) {
    String mark = StepWords.mark(context.state().layout(), coming.part());
    boolean told = model.out().isEmpty() && !context.touch().isLarge();
    return mark.isEmpty() || told ? "or scan its tag" : mark + " first";
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
    refresh();
  }
}
