package wherefrom.ui.numbers;

import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.job.numbers.WorkingBook;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Split;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.workings.InputSpec;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;

/** One working: its figures on the left, what follows from them on the right. */
public final class WorkingScreen extends Page {
  /** So that a result stands in one line beside its figures. */
  private static final double RESULTS_MM = 75;

  private final Touch touch;
  private final WorkingBook book;
  private final Pager<InputSpec> inputs;
  private final Pager<ResultRows.Row> results;
  private final VBox middle;
  private boolean showsResult;

  public WorkingScreen(ScreenContext context, Working working) {
    super(context, "", context.job().isPresent());
    this.touch = context.touch();
    this.book = new WorkingBook(working, context.job());
    inputs = Pager.list(touch, this::row);
    results = Pager.list(touch, row -> ListRow.plain(touch, row.heading(), row.lines()));
    results.setMinWidth(context.scale().px(RESULTS_MM));
    middle = Panes.grow(Panes.column(context.scale()));
    VBox view = Panes.column(context.scale(), middle, keys());
    place();
    fill();
    lay(view);
  }

  private Tiles keys() {
    return touch.isLarge()
        ? Tiles.row(
            context.scale(),
            touch.key("Figures", () -> turn(false)),
            touch.key("Result", () -> turn(true)),
            touch.key("Source", this::about),
            touch.key("Solve", this::solve))
        : Tiles.row(
            context.scale(),
            touch.key("Formula and source", this::about),
            touch.key("Solve backwards", this::solve));
  }

  private void turn(boolean toResult) {
    showsResult = toResult;
    place();
  }

  private void place() {
    if (touch.isLarge()) {
      middle.getChildren().setAll(showsResult ? results : inputs);
    } else {
      middle.getChildren().setAll(new Split(context.scale(), inputs, results));
    }
  }

  private void fill() {
    inputs.refill(book.working().card().inputs());
    results.refill(ResultRows.of(book.answer()));
  }

  private Region row(InputSpec input) {
    String text = book.text(input);
    String shown =
        text.isEmpty()
            ? (input.required() ? "still needed" : "may be left out")
            : FigureModel.shown(text);
    return touch.key(input.words() + ": " + shown, () -> ask(input)).left();
  }

  private void ask(InputSpec input) {
    InputAsking.open(
        context, input, book.text(input), "Not known", text -> book.set(input.key(), text));
  }

  private void about() {
    WorkingCard card = book.working().card();
    context.navigator().open(() -> new AboutWorkingScreen(context, card));
  }

  private void solve() {
    context.navigator().open(() -> new SolveScreen(context, book));
  }

  @Override
  protected void refresh() {
    fill();
  }

  @Override
  public String title() {
    return book.working().card().title();
  }
}
