package wherefrom.ui.bags;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.inspection.Subject;
import wherefrom.job.bags.Bag;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.Bags;
import wherefrom.job.entry.AtAssembly;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.photos.Photograph;
import wherefrom.job.print.TagChoice;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.TagType;
import wherefrom.parts.Whereabouts;
import wherefrom.text.Words;
import wherefrom.ui.app.BackAsking;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScannedPart;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Split;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.photos.PhotoLoader;
import wherefrom.ui.photos.PhotoStrip;
import wherefrom.ui.photos.PhotoTaking;
import wherefrom.ui.print.PrintTagsScreen;

/** One bag: what it held, for what, its holes, what goes on the threads; where it is now. */
public final class BagScreen extends Page implements Scannable {
  private static final double MAP_MM = 84;

  private final int number;
  private final BagFilling filling;
  private final BagAnswers answers;
  private final PhotoLoader loader;
  private final Pager<Supplier<Region>> rows;
  private final TagKey tag;
  private final KeyRow keys;
  private final Foot foot;
  private final VBox view;

  /**
   * @param number of a bag, whether it holds anything yet or not
   */
  public BagScreen(ScreenContext context, int number) {
    super(context, "Bag " + number);
    this.number = number;
    filling = new BagFilling(context);
    answers = new BagAnswers(context);
    loader = new PhotoLoader(context);
    rows = Pager.list(context.touch(), Supplier::get);
    tag = tag(this::press);
    keys = KeyRow.of(context);
    foot = new Foot(context, tag, keys);
    view = Panes.column(context.scale());
    lay(view);
  }

  private Optional<Bag> bag() {
    return BagBook.of(context.state()).findBag(number);
  }

  @Override
  public String aside() {
    return new TagBook(context.state(), context.shelf()).bag(number).typed();
  }

  @Override
  protected void refresh() {
    Optional<Bag> bag = bag();
    rows.refill(bag.map(this::lines).orElseGet(this::empty));
    keys.setActs(bag.map(this::acts).orElse(List.of()));
    tag.setWords(bag.map(BagScreen::deed).orElse("Say what is in it"), "");
    foot.offerTag(bag.filter(one -> one.where() == Whereabouts.FITTED).isEmpty());
    view.getChildren().setAll(bag.map(this::body).orElse(rows), foot);
  }

  /** Beside the words where the holes are drawn; else where it belongs on the engine. */
  private Region body(Bag bag) {
    boolean drawn = bag.filled().holes().stream().anyMatch(hole -> hole.across().isPresent());
    if (drawn && touch().scale().textFactor() == 1) {
      HoleMap map = HoleMap.shown(touch(), bag.filled().holes());
      return Panes.grow(new Split(context.scale(), rows, Panes.wide(map, MAP_MM, context.scale())));
    }
    return BagBook.of(context.state())
        .findBigPart(bag.filled().bigPart())
        .flatMap(part -> BigPartPlace.beside(context, part.part().name(), rows))
        .orElse(rows);
  }

  private List<Supplier<Region>> empty() {
    return List.of(
        () ->
            ListRow.told(
                touch(), "Nothing is in it yet", "Count the pieces as they go into the bag."));
  }

  private List<Supplier<Region>> lines(Bag bag) {
    BagFilled filled = bag.filled();
    List<Supplier<Region>> lines = new ArrayList<>();
    String whose = BagBook.of(context.state()).belongsTo(bag);
    String pieces = Words.count(filled.pieces(), "piece");
    lines.add(
        () ->
            ListRow.plain(
                touch(),
                Words.capital(filled.what()),
                List.of(
                    (whose.isEmpty() ? pieces : pieces + ", for the " + whose) + ".",
                    Words.sentence(bag.where().words()))));
    told(lines, "Noted", bag.note());
    told(lines, "Washer order", filled.order());
    told(
        lines, "On the threads", filled.with() == AtAssembly.NOT_SAID ? "" : filled.with().words());
    told(lines, "Bolt lengths", HoleWords.lengths(filled.holes()));
    PhotoStrip.rows(context, loader, this::photos, PhotoStrip.across(context))
        .forEach(strip -> lines.add(() -> strip));
    return lines;
  }

  private void told(List<Supplier<Region>> lines, String heading, String words) {
    if (!words.isEmpty()) {
      lines.add(() -> ListRow.plain(touch(), heading, List.of(words)));
    }
  }

  private List<Photograph> photos() {
    return Photograph.listOf(context.state(), Subject.ofBag(number));
  }

  private static String deed(Bag bag) {
    return switch (bag.where()) {
      case WASHING, AT_SHOP -> "It is back";
      case LOST -> "It is found";
      default ->
          bag.filled().pieces() == 1
              ? "It is in the engine"
              : "All " + bag.filled().pieces() + " are in the engine";
    };
  }

  private void press() {
    Optional<Bag> bag = bag();
    if (bag.isEmpty()) {
      filling.fill(number);
    } else if (bag.get().where() == Whereabouts.OUT) {
      move(Whereabouts.FITTED, bag.get().filled().pieces());
    } else {
      BackAsking.ask(context, bag.get().where(), () -> back(bag.get()));
    }
  }

  private ShopAsking shop() {
    return new ShopAsking(context, answers, new Subject.Beside(TagType.BAG, number));
  }

  private void back(Bag bag) {
    ShopAsking shop = shop();
    boolean slip = bag.where() == Whereabouts.AT_SHOP && shop.isOnSlip();
    answers.take(
        note ->
            slip ? shop.back() : new Bags(context.getJob()).move(number, Whereabouts.OUT, 0, note));
  }

  private void move(Whereabouts to, int counted) {
    answers.take(note -> new Bags(context.getJob()).move(number, to, counted, note));
  }

  private List<KeyRow.Act> acts(Bag bag) {
    List<KeyRow.Act> acts = new ArrayList<>();
    if (bag.where() == Whereabouts.FITTED) {
      acts.add(act("Taken out", () -> move(Whereabouts.OUT, 0)));
    }
    if (bag.where() == Whereabouts.OUT) {
      acts.add(act("Count", this::count));
    }
    acts.add(act("Holes", () -> open(() -> new HolesScreen(context, number))));
    acts.add(act("Photo", this::photo));
    acts.add(act("Correct", () -> filling.mend(bag)));
    if (bag.where() == Whereabouts.OUT) {
      acts.add(act("To wash", () -> move(Whereabouts.WASHING, 0)));
      acts.add(act("To the shop", () -> shop().askWords()));
    }
    if (bag.where() != Whereabouts.LOST && bag.where() != Whereabouts.FITTED) {
      acts.add(act("Lost", () -> move(Whereabouts.LOST, 0)));
    }
    acts.add(
        act(
            "Print its tag",
            () -> open(() -> PrintTagsScreen.of(context, new TagChoice.BagTags(number, 1)))));
    return acts;
  }

  private void photo() {
    PhotoTaking.ask(context, Optional.of(Subject.ofBag(number)), "");
  }

  /** Counted now: all of them go in, or something is short. */
  private void count() {
    open(
        () ->
            NumberEntryScreen.digits(
                context,
                title(),
                "How many go in?",
                3,
                typed -> {
                  if (!typed.isEmpty() && Integer.parseInt(typed) > 0) {
                    move(Whereabouts.FITTED, Integer.parseInt(typed));
                  }
                }));
  }

  @Override
  public void scan(Scanned scanned) {
    BesideScan.leave(context, scanned.getFound());
    ScannedPart.open(context, scanned);
  }
}
