package wherefrom.ui.bags;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.job.bags.Bag;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.bags.BigParts;
import wherefrom.job.print.TagChoice;
import wherefrom.parts.Whereabouts;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScannedPart;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.app.TypedCode;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.print.PrintTagsScreen;

/** Bags of fasteners and big parts: what is off comes first, what is used again last. */
public final class BagsScreen extends Page implements Scannable {

  /** Which of the two is listed; kept while the window is open. */
  private static final class Shown {
    private boolean bigParts;
  }

  private static final int ACROSS = 4;
  private static final int ACROSS_WHERE_LARGE = 2;
  private static final int MOST_TAGS = 99;
  private static final String FRESH = "New bag";
  private static final String USUAL = "Add the usual ones";

  private final Shown shown;
  private final BagFilling filling;
  private final BagAnswers answers;
  private final Pager<Region> list;
  private final VBox view;

  public BagsScreen(ScreenContext context) {
    super(context, "Bags and big parts");
    shown = context.kept().keep(Shown.class, Shown::new);
    filling = new BagFilling(context);
    answers = new BagAnswers(context);
    list = Pager.list(context.touch(), row -> row);
    view = Panes.column(context.scale());
    lay(view);
  }

  private BagBook book() {
    return BagBook.of(context.state());
  }

  /** {@code 52 pieces in 4 bags}; of big parts how many are off. */
  @Override
  public String aside() {
    if (shown.bigParts) {
      return book().bigPartsOff().size() + " to fit";
    }
    List<Bag> open = book().openBags();
    int pieces = open.stream().mapToInt(bag -> bag.filled().pieces()).sum();
    return touch().isLarge()
        ? Words.count(open.size(), "bag")
        : Words.count(pieces, "piece") + " in " + Words.count(open.size(), "bag");
  }

  @Override
  protected void refresh() {
    list.refill(shown.bigParts ? bigParts() : bags());
    view.getChildren().setAll(list);
    Optional<TagKey> first = first();
    if (first.isPresent() && touch().isLarge()) {
      view.getChildren().add(new Foot(context, first.get(), KeyRow.of(context, 1, acts())));
      return;
    }
    first.ifPresent(view.getChildren()::add);
    view.getChildren().add(keys());
  }

  /** The other list, then what else there is to do. */
  private List<KeyRow.Act> acts() {
    List<KeyRow.Act> acts = new ArrayList<>();
    boolean bags = shown.bigParts;
    acts.add(act(bags ? "Bags" : "Big parts", () -> show(!bags)));
    ways().stream()
        .filter(way -> !way.words().equals(bags ? USUAL : FRESH))
        .forEach(way -> acts.add(act(way.words(), way.value())));
    return acts;
  }

  /** What there is to do where nothing is listed yet. */
  private Optional<TagKey> first() {
    boolean empty = shown.bigParts ? book().bigParts().isEmpty() : book().bags().isEmpty();
    if (!empty) {
      return Optional.empty();
    }
    TagKey tag = tag(shown.bigParts ? this::addUsual : filling::fresh);
    tag.setWords(
        shown.bigParts ? USUAL : FRESH,
        shown.bigParts ? "big parts of this engine" : "say what is in it");
    return Optional.of(tag);
  }

  private List<Region> bags() {
    BagBook book = book();
    List<Region> rows = new ArrayList<>();
    book.bags().stream()
        .sorted(Comparator.comparing(bag -> bag.where() == Whereabouts.FITTED))
        .forEach(bag -> rows.add(row(book, bag)));
    if (rows.isEmpty()) {
      String words = "Stick a numbered tag on each bag. Then say here what is in it.";
      rows.add(ListRow.told(touch(), "No bag yet", words));
    }
    return rows;
  }

  private Region row(BagBook book, Bag bag) {
    return BagKey.of(
        touch(), bag, book.belongsTo(bag), () -> open(() -> new BagScreen(context, bag.number())));
  }

  private List<Region> bigParts() {
    List<BigPartRecord> parts = new ArrayList<>(book().bigParts());
    parts.sort(Comparator.comparing(BigPartRecord::isOn));
    if (parts.isEmpty()) {
      String words = "Heads, covers, pumps and manifolds: add the usual ones of this engine.";
      return List.of(ListRow.told(touch(), "No big part yet", words));
    }
    int across = touch().isLarge() ? ACROSS_WHERE_LARGE : ACROSS;
    List<Region> rows = new ArrayList<>();
    for (int from = 0; from < parts.size(); from += across) {
      rows.add(row(parts.subList(from, Math.min(parts.size(), from + across)), across));
    }
    return rows;
  }

  /** The last row is filled up, so that its plates are as wide as the others. */
  private Region row(List<BigPartRecord> parts, int across) {
    List<Node> cells = new ArrayList<>();
    for (BigPartRecord part : parts) {
      int number = part.number();
      cells.add(
          BigPartKey.of(
              touch(),
              context.state().layout(),
              part,
              () -> open(() -> new BigPartScreen(context, number))));
    }
    while (cells.size() < across) {
      cells.add(new Region());
    }
    return Tiles.row(context.scale(), cells.toArray(Node[]::new));
  }

  private Region keys() {
    TouchKey bags = touch().key("Bags", () -> show(false)).select(!shown.bigParts);
    TouchKey big = touch().key("Big parts", () -> show(true)).select(shown.bigParts);
    TouchKey more = touch().key("More", this::more);
    if (touch().isLarge()) {
      return Tiles.row(context.scale(), shown.bigParts ? bags : big, more);
    }
    TouchKey gaskets = touch().key("Always new", this::gaskets);
    if (!shown.bigParts && book().bags().isEmpty()) {
      return Tiles.row(context.scale(), bags, big, gaskets, more);
    }
    TouchKey fresh =
        shown.bigParts ? touch().key("Add one", this::addOne) : touch().key(FRESH, filling::fresh);
    return Tiles.row(context.scale(), bags, big, fresh, gaskets, more);
  }

  private void show(boolean bigParts) {
    shown.bigParts = bigParts;
    context.navigator().changed();
  }

  private List<Choice<Runnable>> ways() {
    List<Choice<Runnable>> ways = new ArrayList<>();
    if (touch().isLarge()) {
      ways.add(new Choice<>(filling::fresh, FRESH, "say what is in it"));
      ways.add(new Choice<>(this::addOne, "Add a big part", "by a word"));
      ways.add(new Choice<>(this::gaskets, "Always new", "gaskets and seals"));
    }
    ways.add(new Choice<>(this::addUsual, USUAL, "big parts of this engine"));
    ways.add(new Choice<>(this::printBags, "Print bag tags", "the next numbers"));
    ways.add(new Choice<>(this::printBigParts, "Print big part tags", "all of them"));
    ways.add(
        new Choice<>(
            () -> TypedCode.ask(context, this::scan), "Type code", "the six digits on a tag"));
    return ways;
  }

  private void more() {
    List<Choice<Runnable>> ways = ways();
    context.navigator().open(() -> new ChoiceScreen<>(context, title(), ways, Runnable::run));
  }

  private void gaskets() {
    open(() -> new GasketsScreen(context));
  }

  private void addUsual() {
    shown.bigParts = true;
    answers.take(none -> new BigParts(context.getJob()).nameUsual());
  }

  private void addOne() {
    shown.bigParts = true;
    open(
        () ->
            new TextEntryScreen(
                context,
                "Its name",
                "",
                word -> answers.take(none -> new BigParts(context.getJob()).nameOwn(word))));
  }

  private void printBags() {
    open(
        () ->
            NumberEntryScreen.digits(
                context, "Bag tags", "How many, from the next number on?", 2, this::printBags));
  }

  private void printBags(String typed) {
    int many = typed.isEmpty() ? 0 : Integer.parseInt(typed);
    if (many > 0 && many <= MOST_TAGS) {
      print(TagChoice.BagTags.more(many));
    }
  }

  private void printBigParts() {
    print(TagChoice.BigPartTags.all());
  }

  private void print(TagChoice choice) {
    open(() -> PrintTagsScreen.of(context, choice));
  }

  @Override
  public void scan(Scanned scanned) {
    ScannedPart.open(context, scanned);
  }
}
