package wherefrom.ui.print;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.scene.layout.Region;
import wherefrom.files.FileNames;
import wherefrom.job.print.Nudge;
import wherefrom.job.print.PrintOrder;
import wherefrom.job.print.PrintOutcome;
import wherefrom.job.print.TagChoice;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.AskKey;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.files.Saving;

/** Printing tags and cards: what, on which label stock, from which label on. */
public final class PrintTagsScreen implements Screen {
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss", Locale.ROOT);
  private static final double SHEET_LONG_MM = 160;

  private final Desk desk;
  private final PrintTagsModel model;
  private final PrintChoices choices;
  private final AskKey what;
  private final AskKey stock;
  private final TouchKey places;
  private final TouchKey actions;
  private final TouchKey start;
  private final TouchKey nudge;
  private final TouchKey page;
  private final FitText warning;
  private final SheetView sheet;
  private final TagKey tag;
  private final PrintView view;

  /**
   * @param item the part whose tag alone is meant; 0 for what is not printed yet
   */
  public PrintTagsScreen(Desk desk, int item) {
    this.desk = desk;
    Touch touch = desk.touch();
    model =
        new PrintTagsModel(desk.getJob(), desk.equipment().printer(), item, Locale.getDefault());
    choices = new PrintChoices(desk, model, this::shown);
    what = AskKey.key(touch, "What", choices::what);
    stock = AskKey.key(touch, "Stock", choices::stock);
    places =
        touch.key(touch.brief("Place cards", "Places"), () -> chosen(new TagChoice.PlaceCards()));
    actions =
        touch.key(
            touch.brief("Action cards", "Actions"), () -> chosen(new TagChoice.ActionCards()));
    start = touch.key("Start", this::chooseStart);
    nudge = touch.key("Nudge", this::chooseNudge);
    page = touch.key("", this::turn);
    warning = touch.small("");
    sheet = SheetView.key(desk, (int) desk.scale().px(SHEET_LONG_MM), this::preview);
    tag = touch.tag("Print", "", this::press);
    TouchKey save = touch.key("Save PDF", () -> save(false));
    view = new PrintView(touch, sheet, page, rows(touch), warning, tag, save);
  }

  /** Large text leaves room for two keys more: what they choose stands on a page of its own. */
  private List<Region> rows(Touch touch) {
    if (touch.isLarge()) {
      return List.of(
          what,
          Tiles.row(
              desk.scale(), touch.key("See it", this::preview), touch.key("Paper", this::paper)));
    }
    return List.of(
        what,
        Tiles.row(desk.scale(), places, actions),
        stock,
        Tiles.row(desk.scale(), start, nudge, touch.key("Test page", this::testPage)));
  }

  private void paper() {
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(choices::stock, "Stock", model.stockWords()),
            new Choice<>(this::chooseStart, "Start", "at label " + model.start()),
            new Choice<>(this::chooseNudge, "Nudge", NudgeScreen.words(model.nudge())),
            new Choice<>(this::testPage, "Test page", "outlines and a ruler"));
    desk.navigator().open(() -> new ChoiceScreen<>(desk, "Paper", ways, Runnable::run));
  }

  private void testPage() {
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(() -> print(true), "Print…", ""),
            new Choice<>(() -> save(true), "Save PDF…", ""));
    desk.navigator().open(() -> new ChoiceScreen<>(desk, "Test page", ways, Runnable::run));
  }

  private void preview() {
    desk.navigator().open(() -> new PreviewScreen(desk, model));
  }

  private void turn() {
    model.turn();
    shown();
  }

  /** Prints, or takes it that the saved file is on paper. */
  private void press() {
    if (model.isSaved()) {
      desk.attempt(() -> desk.say(model.onPaper()));
      desk.navigator().changed();
    } else if (model.labels() == 0) {
      desk.navigator().back();
    } else {
      print(false);
    }
  }

  @Override
  public String title() {
    return "Print tags";
  }

  @Override
  public String aside() {
    return desk.touch().isLarge() ? "" : Words.count(model.labels(), "label");
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    what.say(model.choiceWords());
    stock.say(model.briefStock());
    places.select(model.choice() instanceof TagChoice.PlaceCards);
    actions.select(model.choice() instanceof TagChoice.ActionCards);
    start.setWords(model.start() == 1 ? "Start" : "Start: " + model.start());
    nudge.setWords(model.nudge().equals(Nudge.NONE) ? "Nudge" : "Nudged");
    page.setWords(model.pageWords().isEmpty() ? "" : "Page " + model.pageWords());
    warning.setWords(model.warning());
    say();
    sheet.show(model.order(false), model.page());
    view.requestLayout();
  }

  private void say() {
    if (model.isSaved()) {
      tag.setWords("It is on paper", "the saved file is printed");
    } else if (model.labels() == 0) {
      tag.setWords("All printed", "back to the work");
    } else {
      tag.setWords("Print", Words.count(model.pages(), "sheet"));
    }
  }

  @Override
  public void changed() {
    shown();
  }

  private void chosen(TagChoice choice) {
    model.choose(choice);
    shown();
  }

  private void chooseStart() {
    model
        .stock()
        .ifPresent(
            sheet ->
                desk.navigator()
                    .open(() -> new SheetScreen(desk, sheet, model.start(), model::startAt)));
  }

  private void chooseNudge() {
    desk.navigator().open(() -> new NudgeScreen(desk, model));
  }

  private Optional<PrintOrder> order(boolean testPage) {
    Optional<PrintOrder> order = model.order(testPage);
    if (order.isEmpty()) {
      desk.say(model.count());
    }
    return order;
  }

  private void print(boolean testPage) {
    order(testPage).ifPresent(order -> work(order, () -> desk.equipment().printer().print(order)));
  }

  private void save(boolean testPage) {
    order(testPage).ifPresent(this::save);
  }

  private void save(PrintOrder order) {
    String stamp = STAMP.format(ZonedDateTime.now(desk.equipment().clock()));
    String name = FileNames.of(desk.state().name(), model.fileKind(order) + " " + stamp, ".pdf");
    new Saving<>(
            desk,
            "Where to save the PDF",
            name,
            out -> desk.equipment().printer().save(order, out),
            (file, outcome) -> saved(order, outcome, " The file is " + file + "."))
        .ask();
  }

  private void work(PrintOrder order, Callable<PrintOutcome> work) {
    desk.longWork("Printing", work, outcome -> printed(order, outcome));
  }

  private void saved(PrintOrder order, PrintOutcome outcome, String where) {
    String said = model.saved(order, outcome);
    desk.say(outcome instanceof PrintOutcome.Printed ? said + where : said);
    desk.navigator().changed();
  }

  private void printed(PrintOrder order, PrintOutcome outcome) {
    desk.attempt(() -> desk.say(model.printed(order, outcome)));
    desk.navigator().changed();
  }
}
