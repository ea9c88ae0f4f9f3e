package wherefrom.ui.numbers;

import java.util.List;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.job.numbers.WorkingBook;
import wherefrom.quantity.MeasuredText;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.workings.AmountInput;
import wherefrom.workings.ResultValue;

/** Works a working backwards. */
public final class SolveScreen extends Page {
  private static final String WHICH = "Find which figure?";

  private final Touch touch;
  private final WorkingBook book;
  private final SolveModel model;
  private final TouchKey find;
  private final TouchKey result;
  private final TouchKey wanted;
  private final TagKey tag;
  private final Pager<ResultRows.Row> rows;

  private SolveScreen(ScreenContext context, WorkingBook book, AmountInput unknown) {
    super(context, "", false);
    this.touch = context.touch();
    this.book = book;
    model = new SolveModel(book);
    model.find(unknown);
    find = touch.key("", this::chooseUnknown);
    result = touch.key("", this::chooseResult);
    wanted = touch.key("", this::type);
    tag = tag(this::goOn);
    rows = Pager.list(touch, row -> ListRow.plain(touch, row.heading(), row.lines()));
    Tiles sentence = Tiles.row(context.scale(), find, result, wanted);
    lay(Panes.column(context.scale(), sentence, rows, tag));
    refresh();
  }

  /** Asks which figure is to be found, then for the result that it is to give. */
  static void ask(ScreenContext context, WorkingBook book) {
    List<Choice<AmountInput>> choices = choices(new SolveModel(book));
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context,
                    WHICH,
                    choices,
                    input ->
                        context.navigator().open(() -> new SolveScreen(context, book, input))));
  }

  private static List<Choice<AmountInput>> choices(SolveModel model) {
    return model.unknowns().stream()
        .map(input -> new Choice<>(input, Words.capital(input.words()), ""))
        .toList();
  }

  @Override
  protected void refresh() {
    find.setWords("What " + model.unknown().map(AmountInput::words).orElse("…"));
    result.setWords("gives " + model.result().map(ResultValue::words).orElse("…"));
    wanted.setWords("= " + (model.wanted().isEmpty() ? "…" : model.wanted() + "?"));
    result.offer(!model.results().isEmpty());
    wanted.offer(model.result().isPresent());
    rows.setItems(model.rows());
    tag.setWords(due(), "");
    tag.setVisible(model.wanted().isEmpty() || model.findText().isPresent());
  }

  /** What is to be said next; then what comes of it. */
  private String due() {
    if (model.result().isEmpty()) {
      return touch.brief("Choose the result that is wanted", "Which result?");
    }
    return model.wanted().isEmpty()
        ? touch.brief("Type the wanted figure", "Type it")
        : touch.brief("Put it into the working", "Put it in");
  }

  private void goOn() {
    if (model.result().isEmpty()) {
      chooseResult();
    } else if (model.wanted().isEmpty()) {
      type();
    } else {
      putIn();
    }
  }

  private void chooseUnknown() {
    open(() -> new ChoiceScreen<>(context, WHICH, choices(model), this::find));
  }

  private void chooseResult() {
    List<Choice<ResultValue>> choices =
        model.results().stream()
            .map(value -> new Choice<>(value, Words.capital(value.words()), ""))
            .toList();
    open(() -> new ChoiceScreen<>(context, "Gives which result?", choices, this::want));
  }

  /** The screen is on again before the choice arrives. */
  private void find(AmountInput input) {
    model.find(input);
    refresh();
  }

  private void want(ResultValue value) {
    model.want(value);
    refresh();
  }

  private void type() {
    model
        .asked()
        .ifPresent(
            asked ->
                InputAsking.open(
                    context,
                    asked,
                    model.wanted(),
                    "",
                    text -> {
                      model.want(MeasuredText.value(text));
                      return new FigureOutcome.Done();
                    }));
  }

  private void putIn() {
    model
        .findText()
        .ifPresent(
            text ->
                context.attempt(
                    () -> {
                      book.set(model.unknown().orElseThrow().key(), text);
                      context.navigator().back();
                    }));
  }

  @Override
  public String title() {
    return touch.brief("Backwards: " + book.working().card().title(), "Backwards");
  }
}
