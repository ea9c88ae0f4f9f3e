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
import wherefrom.quantity.HomeCountry;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.OnThisJob;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.AskKey;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.files.Saving;

/** Printing tags and cards: what, on which label stock, from which label on. */
public final class PrintTagsScreen extends Page {
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss", Locale.ROOT);
  private static final double SHEET_LONG_MM = 160;

  private final PrintTagsModel model;
  private final PrintChoices choices;
  private final AskKey what;
  private final AskKey stock;
  private static final String PUT_AWAY =
      "The print does not count: its job was put away. Open the job, and print again.";

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
  public PrintTagsScreen(ScreenContext context, int item) {
    this(context, item > 0 ? new TagChoice.OnePart(item) : new TagChoice.NotYetPrinted());
  }

  /** Printing of other tags than those of parts. */
  public static PrintTagsScreen of(ScreenContext context, TagChoice choice) {
    return new PrintTagsScreen(context, choice);
  }

  private PrintTagsScreen(ScreenContext context, TagChoice choice) {
    super(context, "Print tags");
    Touch touch = context.touch();
    model =
        new PrintTagsModel(
            context.getJob(),
            context.services().printer(),
            choice,
            HomeCountry.of(Locale.getDefault(), context.state().units()),
            SheetMemory.in(context));
    choices = new PrintChoices(context, model, this::shown);
    what = AskKey.key(touch, "What", choices::what);
    stock = AskKey.key(touch, "Stock", choices::stock);
    places =
        touch.key(touch.brief("Place cards", "Places"), () -> chosen(new TagChoice.PlaceCards()));
    actions =
        touch.key(
            touch.brief("Action cards", "Actions"), () -> chosen(new TagChoice.ActionCards()));
    start = touch.key("First label", this::chooseStart);
    nudge = touch.key("Move print", this::chooseNudge);
    page = touch.key("", this::turn);
    warning = touch.small("");
    sheet = SheetView.key(context, (int) context.scale().px(SHEET_LONG_MM), this::preview);
    tag = touch.tag("Print", "", this::press);
    TouchKey save = touch.key("Save PDF", () -> save(false));
    view = new PrintView(touch, sheet, page, rows(touch), warning, tag, save);
    lay(view);
  }

  /** Large text leaves room for two keys more: what they choose stands on a page of its own. */
  private List<Region> rows(Touch touch) {
    if (touch.isLarge()) {
      return List.of(
          what,
          Tiles.row(
              context.scale(),
              touch.key("See it", this::preview),
              touch.key("Paper", this::paper)));
    }
    return List.of(
        what,
        Tiles.row(context.scale(), places, actions),
        stock,
        Tiles.row(context.scale(), start, nudge, touch.key("Test page", this::testPage)));
  }

  private void paper() {
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(choices::stock, "Stock", model.stockWords()),
            new Choice<>(this::chooseStart, "First label", "begins at label " + model.start()),
            new Choice<>(this::chooseNudge, "Move print", NudgeScreen.words(model.nudge())),
            new Choice<>(this::testPage, "Test page", "outlines and a ruler"));
    context.navigator().open(() -> new ChoiceScreen<>(context, "Paper", ways, Runnable::run));
  }

  private void testPage() {
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(() -> print(true), "Print…", ""),
            new Choice<>(() -> save(true), "Save PDF…", ""));
    context.navigator().open(() -> new ChoiceScreen<>(context, "Test page", ways, Runnable::run));
  }

  private void preview() {
    context.navigator().open(() -> new PreviewScreen(context, model));
  }

  private void turn() {
    model.turn();
    refresh();
  }

  /** Prints, or takes it that the saved file is on paper. */
  private void press() {
    if (model.isSaved()) {
      context.attempt(() -> context.say(model.onPaper()));
      context.navigator().changed();
    } else if (model.isDone()) {
      model.next().ifPresentOrElse(this::chosen, context.navigator()::back);
    } else {
      print(false);
    }
  }

  @Override
  public String aside() {
    boolean half = model.start() > 1;
    if (context.touch().isLarge()) {
      return half ? "from label " + model.start() : "";
    }
    return model.many();
  }

  @Override
  protected void refresh() {
    what.say(model.choiceWords());
    stock.say(model.briefStock());
    places.select(model.choice() instanceof TagChoice.PlaceCards);
    actions.select(model.choice() instanceof TagChoice.ActionCards);
    start.setWords(model.start() == 1 ? "First label" : "From label " + model.start());
    nudge.setWords(model.nudge().equals(Nudge.NONE) ? "Move print" : "Print moved");
    page.setWords(model.pageWords().isEmpty() ? "" : "Page " + model.pageWords());
    warning.setWords(model.warning());
    say();
    sheet.show(model.order(false), model.page());
    view.requestLayout();
  }

  private void say() {
    if (model.isSaved()) {
      tag.setWords("Is it on paper?", "press once the saved file is printed");
    } else if (model.isDone()) {
      model
          .next()
          .ifPresentOrElse(
              next ->
                  tag.setWords(
                      "Next: " + ChoiceWords.fileKind(next), "putting together wants them"),
              () -> tag.setWords("All printed", "back to the work"));
    } else {
      tag.setWords("Print", Words.count(model.pages(), "sheet"));
    }
  }

  private void chosen(TagChoice choice) {
    model.choose(choice);
    context.navigator().changed();
  }

  private void chooseStart() {
    model
        .stock()
        .ifPresent(
            sheet ->
                context
                    .navigator()
                    .open(() -> new SheetScreen(context, sheet, model.start(), model::startAt)));
  }

  private void chooseNudge() {
    context.navigator().open(() -> new NudgeScreen(context, model));
  }

  private Optional<PrintOrder> order(boolean testPage) {
    Optional<PrintOrder> order = model.order(testPage);
    if (order.isEmpty()) {
      context.say(model.count());
    }
    return order;
  }

  private void print(boolean testPage) {
    order(testPage)
        .ifPresent(order -> work(order, () -> context.services().printer().print(order)));
  }

  private void save(boolean testPage) {
    order(testPage).ifPresent(this::save);
  }

  private void save(PrintOrder order) {
    String stamp = STAMP.format(ZonedDateTime.now(context.services().clock()));
    String name = FileNames.of(context.state().name(), model.fileKind(order) + " " + stamp, ".pdf");
    new Saving<>(
            context,
            "Where to save the PDF",
            name,
            out -> context.services().printer().save(order, out),
            (file, outcome) -> saved(order, outcome, " The file is " + file + "."))
        .ask();
  }

  private void work(PrintOrder order, Callable<PrintOutcome> work) {
    context.longWork(
        "Printing",
        context.writings().of(work),
        OnThisJob.take(context, outcome -> printed(order, outcome), PUT_AWAY));
  }

  private void saved(PrintOrder order, PrintOutcome outcome, String where) {
    String said = model.saved(order, outcome);
    context.say(outcome instanceof PrintOutcome.Printed ? said + where : said);
    context.navigator().changed();
  }

  private void printed(PrintOrder order, PrintOutcome outcome) {
    context.attempt(() -> context.say(model.printed(order, outcome)));
    context.navigator().changed();
  }
}
