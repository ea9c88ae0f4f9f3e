package wherefrom.ui.numbers;

import java.util.List;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.job.numbers.WorkingBook;
import wherefrom.text.Words;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Split;
import wherefrom.ui.controls.Touch;
import wherefrom.workings.InputSpec;
import wherefrom.workings.Result;
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
  private final KeyRow keys;
  private boolean showsResult;

  public WorkingScreen(ScreenContext context, Working working) {
    super(context, "", context.job().isPresent());
    this.touch = context.touch();
    this.book = new WorkingBook(working, context.job());
    inputs = Pager.list(touch, this::row);
    results = Pager.list(touch, row -> ListRow.plain(touch, row.heading(), row.lines()));
    results.setMinWidth(context.scale().px(RESULTS_MM));
    middle = Panes.grow(Panes.column(context.scale()));
    keys = KeyRow.of(context);
    VBox view = Panes.column(context.scale(), middle, keys);
    place();
    fill();
    lay(view);
  }

  private List<KeyRow.Act> acts() {
    return touch.isLarge()
        ? List.of(
            act(showsResult ? "Figures" : "Result", this::turn),
            act("Source", this::about),
            act("Solve", this::solve))
        : List.of(act("Formula and source", this::about), act("Solve backwards", this::solve));
  }

  /** Large letters leave room for the figures or for what follows from them. */
  private void turn() {
    showsResult = !showsResult;
    place();
  }

  private void place() {
    keys.setActs(acts());
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
        text.isEmpty() ? (input.required() ? "still needed" : "may be left out") : shown(text);
    return touch.key(Words.capital(input.words()) + ": " + shown, () -> ask(input)).left();
  }

  /** Large letters say the unit once: {@code 63 ± 0.5 cc}. */
  private String shown(String text) {
    String whole = FigureModel.shown(text);
    return touch.isLarge()
        ? whole.replaceFirst("^(\\S+) (\\S+) ± (\\S+) \\2", "$1 ± $3 $2")
        : whole;
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
    SolveScreen.ask(context, book);
  }

  @Override
  protected void refresh() {
    fill();
  }

  /** What came out, which large letters show on a page of its own. */
  @Override
  public String aside() {
    return touch.isLarge() && book.answer() instanceof Result result && !result.values().isEmpty()
        ? result.values().get(0).text()
        : "";
  }

  @Override
  public String title() {
    return book.working().card().title();
  }
}
