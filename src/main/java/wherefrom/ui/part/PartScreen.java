package wherefrom.ui.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.engine.Spot;
import wherefrom.job.decide.Proposal;
import wherefrom.job.tags.CodeLookup;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScannedPart;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Either;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.photos.PhotoLoader;
import wherefrom.ui.photos.PhotoStrip;

/**
 * One part: large, with what was found on it; its life on the wire; its readings against their
 * limits; its photographs; and the decision that is proposed.
 */
public final class PartScreen extends Page implements Scannable {
  private static final double RIGHT_MM = 83;

  /** What readings and photographs have of wide glass. */
  private static final double RIGHT = 0.42;

  /** How much of the height above the keys the part and what was found on it have. */
  private static final double HEAD = 0.32;

  private static final double MOST_HEAD = 0.68;

  private static final double KEYS_MM = 95;
  private static final int PHOTOS = 2;
  private static final int READINGS = 2;
  private static final List<Deed> LOOK = List.of(Deed.INSPECT);
  private static final List<Deed> LOOK_AND_MEASURE = List.of(Deed.INSPECT, Deed.MEASURE);

  private final PartModel model;
  private final boolean inHand;
  private final PhotoLoader loader;
  private final VBox view;
  private final PartDeeds deeds;

  /**
   * @param item the part's number, which must be one of the open job's
   * @param inHand whether its tag was read; not where it was tapped
   */
  public PartScreen(ScreenContext context, int item, boolean inHand) {
    super(context, "");
    this.inHand = inHand;
    model = new PartModel(context.getJob(), context.services().clock(), item);
    deeds = new PartDeeds(context, model);
    loader = new PhotoLoader(context);
    view = Panes.column(context.scale());
    lay(view);
  }

  @Override
  public String title() {
    return model.title();
  }

  @Override
  public Object identity() {
    return model.part().item();
  }

  @Override
  public String aside() {
    return model.code();
  }

  @Override
  protected void refresh() {
    view.getChildren().setAll(told(), keys());
  }

  /** The tag of another part opens that one's page. */
  @Override
  public void scan(Scanned scanned) {
    if (scanned.getFound() instanceof CodeLookup.ASpot card) {
      card(scanned, card.spot());
      return;
    }
    if (scanned.getFound() instanceof CodeLookup.APart) {
      context.navigator().back();
    }
    ScannedPart.open(context, scanned);
  }

  private PuttingBack puttingBack() {
    return new PuttingBack(context, model.part(), inHand);
  }

  /** With its place card it goes back; while nothing goes in the card is only compared. */
  private void card(Scanned scanned, Spot spot) {
    if (model.isJudgedHere()) {
      puttingBack().go(Optional.of(scanned));
      return;
    }
    CardAnswer answer = CardAnswer.of(context.state(), model.part(), spot);
    if (answer.matches()) {
      context.say(answer.sentence());
    } else {
      context.refuse(answer.headline(), answer.sentence());
    }
  }

  /**
   * Part, life, readings, photographs; the part as large as high glass lets it be. Where large
   * words leave no room for all it is the part alone, or no more than what is the matter.
   */
  private Region told() {
    LifeLine life = new LifeLine(context.touch(), model.life());
    VBox measured = measured();
    double right = Math.max(RIGHT_MM, measured.minWidth(-1) / context.scale().px(1));
    Sideways both =
        measured.getChildren().isEmpty()
            ? Sideways.alone(context.scale(), life)
            : new Sideways(context.scale(), life, measured, right)
                .sharing(context.touch().isLarge() ? 0 : RIGHT);
    Panes.grow(both);
    if (context.scale().textFactor() == 1) {
      return new Either(room -> told(both, room.width(), room.height()));
    }
    Region brief = brief();
    return new Either(
            room -> {
              double width = room.width();
              double height = room.height();
              return Stream.<Region>of(
                      told(both, width, height), new VBox(head(MOST_HEAD * height)))
                  .filter(one -> one.minHeight(width) <= height)
                  .findFirst()
                  .orElse(brief);
            })
        .needing(brief);
  }

  /** The part has its share, and more where the rest does not need the height. */
  private Region told(Sideways both, double width, double height) {
    double spare = height - context.scale().gap() - both.likedHeight(width);
    double side = Math.max(HEAD * height, Math.min(spare, MOST_HEAD * height));
    return Panes.grow(Panes.column(context.scale(), head(side), both));
  }

  private PartHead head(double side) {
    return new PartHead(
        context.touch(),
        context.state().layout(),
        model.part().home(),
        model.matter(),
        model.where(),
        side);
  }

  /** Readings first, then as many photographs as stand in a row. */
  private VBox measured() {
    VBox right = Panes.column(context.scale());
    model.judgements().stream()
        .limit(READINGS)
        .forEach(judged -> right.getChildren().add(new ReadingBar(context.touch(), judged)));
    PhotoStrip.row(context, loader, model::photos, PHOTOS).ifPresent(right.getChildren()::add);
    return right;
  }

  /** The decision that is proposed, and the way to all else. */
  private Region keys() {
    List<Deed> offered = model.deeds();
    List<Node> keys = new ArrayList<>();
    for (Deed deed : context.touch().isLarge() ? LOOK : LOOK_AND_MEASURE) {
      if (offered.contains(deed)) {
        keys.add(context.touch().key(deed.brief(), () -> deeds.act(deed)));
      }
    }
    keys.add(context.touch().key("More", this::more));
    Tiles row = Tiles.row(context.scale(), keys.toArray(Node[]::new));
    if (offered.contains(Deed.OUT)) {
      TagKey out = context.touch().tag("It is out", "", () -> deeds.act(Deed.OUT));
      return new Sideways(context.scale(), out, row, KEYS_MM);
    }
    Optional<WayOn> on = model.waysOn().find();
    if (on.isPresent()) {
      return new Sideways(context.scale(), tag(on.get()), row, KEYS_MM);
    }
    if (model.goesBack()) {
      String then = inHand ? "then its place card" : "then scan its tag";
      TagKey tag =
          context
              .touch()
              .tag(
                  "Put it back",
                  context.touch().brief(then, ""),
                  () -> puttingBack().go(Optional.empty()));
      return new Sideways(context.scale(), tag, row, KEYS_MM);
    }
    return model
        .proposal()
        .<Region>map(found -> new Sideways(context.scale(), tag(found), row, KEYS_MM))
        .orElse(row);
  }

  private TagKey tag(WayOn on) {
    return context
        .touch()
        .tag(on.words(), context.touch().brief(on.more(), ""), () -> deeds.act(on.deed()));
  }

  private TagKey tag(Proposal proposal) {
    String what = proposal.decision().map(made -> "Decide: " + made.word()).orElse("Decide");
    boolean told = proposal.decision().isPresent() && !context.touch().isLarge();
    String why = told ? "it is proposed" : "";
    return context.touch().tag(what, why, () -> deeds.act(Deed.DECIDE));
  }

  private void more() {
    List<Choice<Runnable>> ways = new ArrayList<>();
    ways.add(new Choice<>(this::all, "All that is known", "tag, notes, looks, history"));
    model.deeds().forEach(deed -> ways.add(new Choice<>(() -> deeds.act(deed), deed.words(), "")));
    context.navigator().open(() -> new ChoiceScreen<>(context, model.title(), ways, Runnable::run));
  }

  private void all() {
    context.navigator().open(() -> new PartDetailsScreen(context, model, loader));
  }

  /** What is the matter and where it is, where large words leave no room for more. */
  private Region brief() {
    return Panes.grow(
        Panes.column(
            context.scale(),
            context.touch().small(model.where()),
            context.touch().fit(model.matter(), Scale.SMALL_MM, Scale.SMALL_MM, true)));
  }
}
