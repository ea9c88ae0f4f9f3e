package wherefrom.ui.bags;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Subject;
import wherefrom.job.Caution;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.bags.BigPartSizes;
import wherefrom.job.bags.BigParts;
import wherefrom.job.print.TagChoice;
import wherefrom.parts.TagType;
import wherefrom.parts.Whereabouts;
import wherefrom.text.UsualWords;
import wherefrom.text.Words;
import wherefrom.ui.app.BackAsking;
import wherefrom.ui.app.CautionScreen;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ReasonAsking;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScannedPart;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.Either;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.TwoHalves;
import wherefrom.ui.drawn.BigPartShape;
import wherefrom.ui.measure.MeasureScreen;
import wherefrom.ui.photos.PhotoTaking;
import wherefrom.ui.print.PrintTagsScreen;

/**
 * One big part: its place ringed, what comes off or goes on before it, its bags, marks, photographs
 * and torque cards, and what becomes of it.
 */
public final class BigPartScreen extends Page implements Scannable {
  private static final UsualWords REASONS =
      UsualWords.orOther("it is good", "it is worn", "it is cheap to be sure");

  private static final double OUTLINE_MM = 70;
  private static final double LOW_MM = 40;

  private final int number;
  private final BagFilling filling;
  private final BagAnswers answers;
  private final BigPartRows lines;
  private final Pager<Supplier<Region>> rows;
  private final TagKey tag;
  private final KeyRow keys;
  private final Foot foot;
  private final StackPane outline = Panes.grow(new StackPane());
  private Runnable again = () -> {};

  /**
   * @param number of a big part that the job keeps
   */
  public BigPartScreen(ScreenContext context, int number) {
    super(context, "");
    this.number = number;
    filling = new BagFilling(context);
    answers = new BagAnswers(context);
    lines = new BigPartRows(context);
    rows = Pager.list(context.touch(), Supplier::get);
    tag = tag(this::press);
    keys = KeyRow.of(context);
    foot = new Foot(context, tag, keys);
    Region body = part().map(this::body).orElse(rows);
    VBox view = Panes.column(context.scale(), Panes.grow(body), foot);
    lay(view);
  }

  private Optional<BigPartRecord> part() {
    return BagBook.of(context.state()).findBigPart(number);
  }

  /** Its place on the drawn engine; where the layout does not tell that, its outline. */
  private Region body(BigPartRecord part) {
    return BigPartPlace.beside(context, part.part().name(), rows).orElseGet(this::outlined);
  }

  private Region outlined() {
    Region both = new TwoHalves(context.scale(), rows, outline);
    return touch().isLarge() ? eitherOf(both) : both;
  }

  /** With large letters the outline is there where the rows leave it its room. */
  private Region eitherOf(Region both) {
    Either either =
        new Either(
            room -> {
              boolean upright = Panes.isUpright(rows);
              double wide = upright ? room.width() : room.width() - context.scale().px(OUTLINE_MM);
              double high = upright ? room.height() - context.scale().px(LOW_MM) : room.height();
              return rows.prefHeight(wide) + context.scale().gap() <= high ? both : rows;
            });
    again = either::again;
    return either.needing(rows);
  }

  private BigParts parts() {
    return new BigParts(context.getJob());
  }

  @Override
  public String title() {
    return Words.capital(part().map(BigPartRecord::words).orElse("big part " + number));
  }

  @Override
  public Object identity() {
    return number;
  }

  @Override
  public String aside() {
    return part().map(one -> one.part().code(context.state().engine()).typed()).orElse("");
  }

  @Override
  protected void refresh() {
    rows.refill(part().map(lines::of).orElse(List.of()));
    keys.setActs(part().map(this::acts).orElse(List.of()));
    tag.setWords(part().map(BigPartScreen::deed).orElse("Back"), "");
    foot.offerTag(part().filter(one -> one.where() == Whereabouts.FITTED).isEmpty());
    part().ifPresent(one -> outline.getChildren().setAll(outline(one)));
    again.run();
  }

  private Region outline(BigPartRecord part) {
    return new BigPartShape(
        context.scale(),
        context.state().layout(),
        part.part().name(),
        context.scale().px(OUTLINE_MM),
        part.where());
  }

  private static String deed(BigPartRecord part) {
    return switch (part.where()) {
      case IN_ENGINE -> "It is off";
      case OUT -> "It is on";
      case LOST -> "It is found";
      default -> "It is back";
    };
  }

  private void press() {
    Whereabouts where = part().map(BigPartRecord::where).orElse(Whereabouts.RETIRED);
    switch (where) {
      case IN_ENGINE -> answers.take(note -> parts().off(number, note));
      case OUT -> answers.take(note -> parts().on(number, note));
      case LOST -> move(Whereabouts.OUT);
      case WASHING -> BackAsking.ask(context, where, () -> move(Whereabouts.OUT));
      case AT_SHOP -> BackAsking.ask(context, where, this::backFromShop);
      case FITTED, RETIRED -> context.navigator().back();
    }
  }

  private ShopAsking shop() {
    return new ShopAsking(context, answers, new Subject.Beside(TagType.BIG_PART, number));
  }

  private void backFromShop() {
    ShopAsking shop = shop();
    answers.take(
        note -> shop.isOnSlip() ? shop.back() : parts().move(number, Whereabouts.OUT, note));
  }

  private void move(Whereabouts to) {
    answers.take(note -> parts().move(number, to, note));
  }

  private List<KeyRow.Act> acts(BigPartRecord part) {
    List<KeyRow.Act> acts = new ArrayList<>();
    if (part.where() == Whereabouts.FITTED) {
      acts.add(act("Taken off", () -> answers.take(note -> parts().off(number, note))));
    }
    acts.add(act("New bag", () -> filling.fillFor(part)));
    acts.add(
        act("Photo", () -> PhotoTaking.ask(context, Optional.of(Subject.ofBigPart(number)), "")));
    acts.add(act("Decide", this::decide));
    if (!measured(part).isEmpty()) {
      acts.add(act("Measure", () -> measure(part)));
    }
    acts.add(act("Marks", () -> marks(part)));
    if (part.where() == Whereabouts.OUT) {
      acts.add(act("To wash", () -> move(Whereabouts.WASHING)));
      acts.add(act("To the shop", () -> shop().ask(part.part().name().kind())));
    }
    if (part.where() == Whereabouts.AT_SHOP && shop().isOnSlip()) {
      acts.add(act("More work", () -> shop().ask(part.part().name().kind())));
    }
    if (!part.isOn() && part.where() != Whereabouts.LOST) {
      acts.add(act("Lost", () -> move(Whereabouts.LOST)));
    }
    List<Caution> cautions = Caution.of(part.part().name().kind());
    if (!cautions.isEmpty()) {
      acts.add(act("Cautions", () -> open(() -> new CautionScreen(context, cautions))));
    }
    acts.add(act("Torque cards", () -> context.navigator().show(ScreenId.TORQUE)));
    acts.add(
        act(
            "Print its tag",
            () -> open(() -> PrintTagsScreen.of(context, new TagChoice.BigPartTags(number)))));
    return acts;
  }

  private List<Subject> measured(BigPartRecord part) {
    return BigPartSizes.of(context.state().layout(), part.part().name());
  }

  private void measure(BigPartRecord part) {
    open(() -> MeasureScreen.of(context, title(), measured(part)));
  }

  private void marks(BigPartRecord part) {
    open(
        () ->
            new TextEntryScreen(
                context,
                "Marks and casting numbers",
                part.marks(),
                words -> answers.take(none -> parts().mark(number, words))));
  }

  private void decide() {
    List<Choice<Decision>> choices =
        List.of(
            new Choice<>(Decision.REUSE, "Reuse", "it goes on again"),
            new Choice<>(Decision.MACHINE, "Machine", "it goes to the machine shop"),
            new Choice<>(Decision.REPLACE, "Replace", "a new one goes on"));
    context.navigator().open(() -> new ChoiceScreen<>(context, title(), choices, this::why));
  }

  private void why(Decision decision) {
    ReasonAsking.ask(
        context,
        Words.capital(decision.word()) + ": why?",
        REASONS,
        reason -> answers.take(none -> parts().decide(number, decision, reason)));
  }

  @Override
  public void scan(Scanned scanned) {
    BesideScan.leave(context, scanned.getFound());
    ScannedPart.open(context, scanned);
  }
}
