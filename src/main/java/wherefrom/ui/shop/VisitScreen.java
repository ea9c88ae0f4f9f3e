package wherefrom.ui.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.job.shop.ShopOrder;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Either;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.subject.CellGrid;

/** One visit to the machine shop: parts go on it, the slip is printed, parts come back. */
public final class VisitScreen extends Page implements Scannable {
  private static final int COLUMNS = 3;

  /** In so many pages keys for all that can be wanted are quicker than a list of their own. */
  private static final int MANY = 3;

  private final VisitModel model;
  private final Taking taking;
  private final Slip slip;
  private final FitText said;
  private final Pager<VisitModel.Row> rows;
  private final CellGrid works;
  private final StackPane list = Panes.grow(new StackPane());
  private final TagKey want;
  private final KeyRow keys;
  private final Foot foot;

  VisitScreen(ScreenContext context, VisitModel model) {
    super(context, "");
    this.model = model;
    taking = new Taking(context, model);
    slip = new Slip(context, model);
    said = touch().small("");
    rows = Pager.list(context.touch(), this::row);
    works = new CellGrid(context.touch(), COLUMNS);
    works.show(WantedAsking.cells(context, this::wanted));
    want = touch().tag("", "", this::press);
    keys = KeyRow.of(context);
    foot = new Foot(context, want, keys);
    lay(Panes.column(context.scale(), said, list, foot));
  }

  @Override
  public String title() {
    return "Machine shop, visit " + model.number();
  }

  @Override
  public String aside() {
    return model.aside();
  }

  @Override
  protected void refresh() {
    said.setWords(taking.words());
    rows.refill(model.rows());
    list.getChildren().setAll(listed());
    String work = model.wanted().words();
    Optional<VisitModel.Row> next = model.findNext();
    if (model.checkingIn()) {
      want.setWords(next.map(VisitModel.Row::comesBack).orElse(""), "");
    } else if (work.isEmpty()) {
      want.setWords("What is wanted?", "");
    } else {
      // With large letters the sentence above has no room beside what came of the last scan.
      want.setWords(
          touch().brief("To " + work, "Scan: " + work), touch().brief("press for other work", ""));
    }
    foot.offerTag(model.checkingIn() ? next.isPresent() : !asksForWork() || touch().isLarge());
    keys.setActs(model.checkingIn() ? checkingIn() : puttingOn());
  }

  /** A new visit begins with what is wanted. */
  private boolean asksForWork() {
    return model.visit().isEmpty() && model.wanted().words().isEmpty();
  }

  /** With large letters the tag asks what is wanted, and so do keys where many have room. */
  private Region listed() {
    if (!asksForWork()) {
      return rows;
    }
    return touch().isLarge()
        ? new Either(room -> MANY * room.height() >= works.prefHeight(room.width()) ? works : rows)
        : works;
  }

  @Override
  public void scan(Scanned scanned) {
    taking.scan(scanned);
  }

  private List<KeyRow.Act> puttingOn() {
    List<KeyRow.Act> acts = new ArrayList<>();
    boolean begun = model.visit().isPresent();
    if (begun) {
      acts.add(new KeyRow.Act("Check in", () -> turn(true)));
    }
    String untagged = touch().brief("Crank, block, heads…", "Crank, block…");
    acts.add(new KeyRow.Act(untagged, () -> WorkAsking.ask(context, this::add)));
    acts.add(new KeyRow.Act("Tap on engine", this::tap));
    acts.add(new KeyRow.Act("Type code", taking::askCode));
    acts.add(new KeyRow.Act("Small parts…", () -> SlipLineAsking.askSmall(context, this::add)));
    if (begun) {
      acts.add(new KeyRow.Act("Print the slip…", slip::print));
      acts.add(new KeyRow.Act("Slip as PDF…", slip::save));
    }
    return acts;
  }

  private List<KeyRow.Act> checkingIn() {
    return List.of(
        new KeyRow.Act("Add more", () -> turn(false)),
        new KeyRow.Act("Tap on engine", this::tap),
        new KeyRow.Act("Type code", taking::askCode),
        new KeyRow.Act("Print the slip…", slip::print),
        new KeyRow.Act("Slip as PDF…", slip::save));
  }

  private void turn(boolean checkingIn) {
    model.checkIn(checkingIn);
    taking.forget();
    context.navigator().changed();
  }

  private void press() {
    if (model.checkingIn()) {
      model.findNext().ifPresent(this::back);
    } else {
      want();
    }
  }

  private void want() {
    WantedAsking.ask(context, this::wanted);
  }

  private void wanted(WorkWanted work) {
    model.want(work);
    taking.forget();
  }

  private void tap() {
    open(() -> new TapScreen(context, title(), taking));
  }

  private void add(ShopOrder order) {
    context.attempt(() -> context.say(model.add(order).sentence()));
    context.navigator().changed();
  }

  private Region row(VisitModel.Row row) {
    Touch touch = context.touch();
    String heading = touch.brief(row.heading(), row.briefHeading());
    return model.checkingIn() && row.away() > 0
        ? ListRow.key(touch, heading, row.lines(), () -> back(row))
        : ListRow.plain(touch, heading, row.lines());
  }

  private void back(VisitModel.Row row) {
    if (row.line() == 0) {
      context.attempt(
          () -> context.say(model.take(context.state().getPart(row.item())).sentence()));
      context.navigator().changed();
    } else if (row.away() == 1) {
      measure(row, 1);
    } else {
      open(
          () ->
              NumberEntryScreen.digits(
                  context,
                  row.heading(),
                  "How many did you count?",
                  3,
                  typed -> measure(row, typed.isEmpty() ? 0 : Integer.parseInt(typed))));
    }
  }

  private void measure(VisitModel.Row row, int count) {
    Optional<String> target = model.target(row.line());
    if (target.isEmpty()) {
      counted(row, count, "");
      return;
    }
    open(
        () ->
            NumberEntryScreen.size(
                context,
                row.heading(),
                "Wanted is " + target.get() + ". Measured? Done alone: not measured yet.",
                9,
                figure -> counted(row, count, figure)));
  }

  private void counted(VisitModel.Row row, int count, String figure) {
    context.attempt(() -> context.say(model.back(row.line(), count, figure).sentence()));
    context.navigator().changed();
  }
}
