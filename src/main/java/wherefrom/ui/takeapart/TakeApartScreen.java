package wherefrom.ui.takeapart;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.drawing.DrawnAs;
import wherefrom.job.PartRecord;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.tags.CodeLookup;
import wherefrom.parts.Action;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.Cue;
import wherefrom.ui.app.Help;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.Watching;
import wherefrom.ui.bags.BesideScan;
import wherefrom.ui.controls.AnswerCard;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.ScreenAnswer;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.PartShape;
import wherefrom.ui.drawn.PartStates;
import wherefrom.ui.engine.EnginePages;
import wherefrom.ui.engine.WorkIndex;

/** Taking apart: what comes out next and where; what came out last. */
public final class TakeApartScreen extends Page implements Watching {
  private static final int MOST = 6;
  private static final String BAG = "bag its bolts and count them";
  private static final String OFF = "take it off";
  private static final double SHAPE_MM = 30;

  private final TakeApartModel model;
  private final PartActs acts;
  private final BigPartStep bigParts;
  private final StepKeys stepKeys;
  private final Tiles plain;
  private final Tiles named;
  private final Tiles inOneLine;
  private final AnswerCard card;
  private final EnginePages pages;
  private final EngineView engine;
  private final TagKey tag;
  private final NextTag words;
  private final NextView next;
  private final StackPane view = Panes.grow(new StackPane());

  public TakeApartScreen(ScreenContext context) {
    super(context, "Take apart");
    Touch touch = context.touch();
    model = new TakeApartModel(context.getJob(), () -> context.settings().outOrder());
    acts = new PartActs(context, model, this::answer);
    bigParts = new BigPartStep(context);
    stepKeys = new StepKeys(context, acts, bigParts);
    card = new AnswerCard(touch);
    pages =
        new EnginePages(
            context,
            new WorkIndex(
                context, () -> "Which is out?", model::here, this::tapped, this::scannedOnPage));
    engine = pages.view();
    plain = Tiles.row(context.scale());
    named = Tiles.row(context.scale());
    inOneLine = Tiles.row(context.scale());
    tag = touch.tag("It is out", "or scan its tag", this::press);
    words = new NextTag(tag, touch);
    next = new NextView(touch, tag, engine, List.of(plain, named, inOneLine));
    lay(view);
  }

  /** The big part that comes off before the next tagged part. */
  private Optional<BigPartRecord> lead() {
    return bigParts.find(model.here());
  }

  /** The keys say which part they mean: the one that came out last, else the next. */
  private void keys(Optional<BigPartRecord> lead) {
    boolean out = model.out().isPresent();
    String part = model.subject().map(one -> model.name(one).brief()).orElse("");
    inOneLine.setCells(out ? stepKeys.brief(part, lead, false) : List.of(), MOST);
    if (out) {
      plain.setCells(stepKeys.brief(part, lead, true), MOST);
    } else {
      plain.setCells(lead.map(stepKeys::of).orElseGet(() -> stepKeys.plain(lead)), MOST);
    }
    named.setCells(lead.isPresent() && !out ? List.of() : stepKeys.named(part, lead), MOST);
  }

  @Override
  public String aside() {
    return model.progress();
  }

  @Override
  public void hidden() {
    context.sounds().hush();
  }

  /** While it asks whether a part is out, what the answers do; once all are out, what follows. */
  @Override
  public Help help() {
    if (model.answer().isPresent()) {
      return model.doubt().isPresent() ? Help.of("takeapart.OutOfTurn") : super.help();
    }
    boolean done = model.next().isEmpty() && lead().isEmpty();
    return done ? Help.of("takeapart.AllOut") : super.help();
  }

  @Override
  public Optional<Region> helpPicture(double side) {
    return model.next().map(record -> shape(record.part(), side / context.scale().px(1)));
  }

  @Override
  public boolean escape() {
    boolean asked = model.answer().isPresent();
    if (asked) {
      away();
    }
    return asked;
  }

  @Override
  public boolean takes(Action card) {
    boolean passes = card == Action.SKIP && model.answer().isEmpty() && lead().isPresent();
    return passes || model.takes(card);
  }

  @Override
  public void scan(Scanned scanned) {
    CodeLookup found = scanned.getFound();
    boolean skips = found instanceof CodeLookup.AnAction card && card.action() == Action.SKIP;
    if (BesideScan.isOne(found)) {
      BesideScan.out(context, found);
    } else if (skips && lead().isPresent()) {
      bigParts.pass(lead().get());
    } else {
      sound(model.scan(found));
    }
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
    scan(scanned);
    context.navigator().changed();
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
    Optional<BigPartRecord> lead = lead();
    engine.ring(lead.map(one -> one.part().name()));
    if (lead.isPresent()) {
      engine.show(PartStates.of(context.state()), Set.of());
      words.off(lead.get());
    } else {
      coming.ifPresent(part -> engine.look(EngineView.sideOf(part.part().kind())));
      pages.show(engine);
      say(coming);
    }
    draw(lead, coming);
  }

  private void draw(Optional<BigPartRecord> lead, Optional<PartRecord> coming) {
    keys(lead);
    next.out(model.outWords());
    lead.ifPresentOrElse(this::drawNext, () -> drawNext(coming));
    view.getChildren().setAll(next);
  }

  private void say(Optional<PartRecord> coming) {
    if (coming.isEmpty()) {
      tag.setWords("All are out", "go on: inspect");
    } else {
      PartName name = model.name(coming.get().part());
      boolean large = context.touch().isLarge();
      String named = (large ? name.inLine() : name.brief()).replaceFirst(" ", "\u00a0");
      String first = StepWords.first(context.state().layout(), coming.get().part());
      words.out("It is out: " + named, first, model.out().isEmpty());
    }
  }

  private void drawNext(BigPartRecord part) {
    Region shape = bigParts.shape(part, context.scale().px(SHAPE_MM));
    next.show(BigPartStep.name(part), "", how(BAG, OFF, BAG + ", then " + OFF), shape);
  }

  /** The next part is out; where none is left, the next day begins. */
  private void press() {
    Optional<BigPartRecord> lead = lead();
    if (lead.isPresent()) {
      model.leave();
      bigParts.off(lead.get());
      context.touch().once();
    } else if (model.next().isPresent()) {
      answer(model.nextIsOut());
      context.touch().once();
    } else {
      context.navigator().show(ScreenId.BETWEEN);
    }
  }

  private void drawNext(Optional<PartRecord> coming) {
    if (coming.isEmpty()) {
      next.showNothing("Every part came out. Look at each of them next.");
    } else {
      Part part = coming.get().part();
      next.show(model.name(part), how(part), shape(part, SHAPE_MM));
    }
  }

  private NextView.HowOut how(Part part) {
    String way = StepWords.way(context.state().kinds(), part);
    return how(
        StepWords.mark(context.state().layout(), part),
        way,
        StepWords.markThenWay(context.state().layout(), part, way));
  }

  /** What to mark stands beside the name; once that is what came out, with the way. */
  private NextView.HowOut how(String mark, String way, String both) {
    return new NextView.HowOut(mark, model.out().isEmpty() ? way : both, both);
  }

  private Region shape(Part part, double mm) {
    return new PartShape(
        context.scale(),
        context.state().layout(),
        part.home(),
        context.scale().px(mm),
        DrawnAs.HERE);
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
