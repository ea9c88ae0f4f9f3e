package wherefrom.ui.benchmap;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import wherefrom.drawing.Holder;
import wherefrom.drawing.View;
import wherefrom.engine.Layout;
import wherefrom.job.Caution;
import wherefrom.job.tags.CodeLookup;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.Cue;
import wherefrom.text.Words;
import wherefrom.ui.app.CautionScreen;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.RailKey;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.StandardRail;
import wherefrom.ui.app.TypedCode;
import wherefrom.ui.controls.Icon;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.debris.DebrisScreen;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.KindKey;
import wherefrom.ui.engine.EngineBeside;
import wherefrom.ui.engine.EngineIndex;
import wherefrom.ui.engine.EnginePages;
import wherefrom.ui.engine.PartIndex;
import wherefrom.ui.engine.PlaceListScreen;
import wherefrom.ui.photos.PhotoIndex;
import wherefrom.ui.tray.TrayPurpose;
import wherefrom.ui.tray.TrayTaking;

/** Where the parts of a kind lie: on the engine and in numbers; off for washing and back. */
public final class BenchMapScreen extends Page implements Scannable {

  /** A key of the last row. */
  private record Way(String words, Runnable act) {}

  /** Two places beside each other. */
  private static final double HOLDERS_MM = 55.5;

  /** The kinds, the engine, the keys: what has no room among them stands behind the last. */
  private static final int ROWS = 3;

  private final BenchMapModel model;
  private final VBox view;
  private EnginePages pages;
  private EngineView engine;
  private PartKind drawnKind;
  private List<PartKind> offered = List.of();
  private Tiles kinds;
  private final KeyRow keys;

  public BenchMapScreen(ScreenContext context) {
    super(context, "");
    model = new BenchMapModel(context.getJob(), context.nanos());
    view = Panes.column(context.scale());
    pages = pages();
    engine = pages.view();
    drawnKind = model.kind();
    kinds = kinds();
    keys = KeyRow.of(context);
    lay(view);
  }

  private EnginePages pages() {
    return new EnginePages(context, new BenchIndex(context, model, this::tapped, this::scan));
  }

  @Override
  public String title() {
    return context.touch().isLarge() ? BenchTitle.brief(model).title() : model.title();
  }

  @Override
  public void hidden() {
    context.sounds().hush();
  }

  @Override
  public void scan(Scanned scanned) {
    boolean isPart = scanned.getFound() instanceof CodeLookup.APart;
    answer(model.scan(scanned.getFound()), isPart ? ScreenId.PART_IN_HAND : ScreenId.PART);
  }

  private void tapped(Optional<Cue> cue) {
    answer(cue, ScreenId.PART);
  }

  /**
   * Sounds, says and opens what came of a tap or a scan.
   *
   * @param page the page of a part, as it is opened
   */
  private void answer(Optional<Cue> cue, ScreenId page) {
    cue.ifPresent(context.sounds()::play);
    Optional<Integer> opened = model.takeOpened();
    Optional<CodeLookup> refused = model.takeRefused();
    if (refused.isPresent()) {
      context.refuse(refused.get(), "");
    } else if (opened.isPresent()) {
      context.navigator().show(page, opened.get());
    } else if (!model.said().isEmpty()) {
      context.say(model.said());
    }
  }

  private Layout layout() {
    return context.state().layout();
  }

  @Override
  protected void refresh() {
    if (drawnKind != model.kind()) {
      pages = pages();
      engine = pages.view();
      drawnKind = model.kind();
    }
    pages.show(engine);
    EngineBeside middle = new EngineBeside(context.scale(), engine, holders(), HOLDERS_MM);
    if (context.touch().isLarge()) {
      view.getChildren().setAll(keysWhereLarge(), middle);
    } else {
      showBetween(middle);
    }
  }

  /** The keys stay where they are: one of them may be under a finger. */
  private void showBetween(EngineBeside middle) {
    keys.setActs(ways().stream().map(way -> act(way.words(), way.act())).toList());
    boolean same = view.getChildren().size() == ROWS && offered.equals(model.kinds());
    if (same) {
      KindKey.choose(kinds, model.kind());
      view.getChildren().set(1, middle);
    } else {
      offered = model.kinds();
      kinds = kinds();
      view.getChildren().setAll(kinds, middle, keys);
    }
  }

  private Tiles kinds() {
    return KindKey.row(
        context.touch(), layout(), model.kinds(), Optional.of(model.kind()), this::show);
  }

  /** Large words leave no room for the kinds' shapes and the row of keys. */
  private Tiles keysWhereLarge() {
    String plural = Words.capital(model.kind().plural());
    List<Node> few = new ArrayList<>();
    few.add(context.touch().key(plural, this::chooseKind));
    if (model.mode() == BenchMapModel.Mode.WASH) {
      few.add(context.touch().key("Done", this::washed));
    }
    few.add(context.touch().key("More", () -> more(ways())));
    return Tiles.row(context.scale(), few.toArray(Node[]::new));
  }

  private void chooseKind() {
    List<Choice<PartKind>> kinds =
        model.kinds().stream().map(each -> new Choice<>(each, each.plural(), "")).toList();
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(context, "Bench", Choice.now(kinds, model.kind()), this::show));
  }

  private Tiles holders() {
    List<Node> plates = new ArrayList<>();
    Arrays.stream(Holder.values()).map(this::holder).forEach(plates::add);
    return new Tiles(context.scale(), plates.size(), Scale.GAP_MM, plates);
  }

  private HolderKey holder(Holder holder) {
    int many = model.lying(holder).size();
    return HolderKey.of(context.touch(), layout(), model.kind(), holder, many, () -> list(holder));
  }

  private void list(Holder holder) {
    String plural = model.kind().plural();
    String where = BenchMapModel.words(holder);
    String none = "None of the " + plural + " are there.";
    list(where + ": " + plural, none, () -> model.lying(holder));
  }

  private void list(String title, String none, Supplier<List<Place>> places) {
    EngineIndex index = new BenchIndex(context, model, this::tapped, this::scan);
    String capital = Words.capital(title);
    context.navigator().open(() -> new PlaceListScreen(context, index, capital, none, places));
  }

  private List<Way> ways() {
    List<Way> ways = new ArrayList<>();
    Way type = new Way("Type code", this::typeCode);
    Way tray = new Way("Check tray", () -> TrayTaking.ask(context, TrayPurpose.CHECK));
    if (model.mode() == BenchMapModel.Mode.WASH) {
      ways.add(new Way("Washing: done", this::washed));
      ways.add(new Way("Cautions", this::cautions));
      ways.addAll(List.of(type, tray));
      return ways;
    }
    ways.addAll(List.of(new Way("To wash", this::washing), tray, type));
    ways.add(new Way("Bags", () -> context.navigator().show(ScreenId.BAGS)));
    if (model.flags() > 0) {
      ways.add(new Way(model.flags() + " not mated", this::notMated));
    }
    ways.add(new Way("Debris", () -> context.navigator().open(() -> new DebrisScreen(context))));
    ways.add(new Way("Photos", () -> PhotoIndex.open(context)));
    return ways;
  }

  private void more(List<Way> ways) {
    List<Choice<Runnable>> choices = new ArrayList<>();
    ways.forEach(way -> choices.add(new Choice<>(way.act(), way.words(), "")));
    context.navigator().open(() -> new ChoiceScreen<>(context, "Bench", choices, Runnable::run));
  }

  private void notMated() {
    String none = "All parts are mated as they ran.";
    list(BenchMapModel.NOT_MATED, none, model::notMated);
  }

  private void show(PartKind kind) {
    model.show(kind);
    context.navigator().changed();
  }

  private void washed() {
    model.look();
    context.navigator().changed();
  }

  private void washing() {
    context
        .navigator()
        .open(
            () ->
                NumberEntryScreen.digits(
                    context,
                    "To wash",
                    "The basket's number. Or go back and scan the basket's tag.",
                    3,
                    this::basket));
  }

  private void basket(String typed) {
    int number = typed.isEmpty() ? 0 : Integer.parseInt(typed);
    if (number > 0) {
      model.wash(number);
      context.say(model.prompt());
    }
    context.navigator().changed();
  }

  private void cautions() {
    context.navigator().open(() -> new CautionScreen(context, Caution.atWashing()));
  }

  private void typeCode() {
    TypedCode.ask(context, this::scan);
  }

  @Override
  public String aside() {
    return context.touch().isLarge() ? BenchTitle.brief(model).aside() : model.aside();
  }

  @Override
  public List<RailKey> rail(StandardRail standard) {
    List<RailKey> keys = new ArrayList<>();
    standard.back().ifPresent(keys::add);
    keys.add(new RailKey(Icon.ENGINE, "Engine", this::engine));
    standard.camera().ifPresent(keys::add);
    return keys;
  }

  /** The whole engine, all kinds. */
  private void engine() {
    PartIndex.pages(context).open(View.ABOVE);
  }
}
