package wherefrom.ui.numbers;

import java.util.List;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.job.numbers.WorkingBook;
import wherefrom.quantity.MeasuredText;
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
  private final Touch touch;
  private final WorkingBook book;
  private final SolveModel model;
  private final TouchKey find;
  private final TouchKey result;
  private final TouchKey wanted;
  private final Tiles sentence;
  private final TagKey tag;
  private final Pager<ResultRows.Row> rows;

  SolveScreen(ScreenContext context, WorkingBook book) {
    super(context, "", false);
    this.touch = context.touch();
    this.book = book;
    model = new SolveModel(book);
    find = touch.key("", this::chooseUnknown);
    result = touch.key("", this::chooseResult);
    wanted = touch.key("", this::type);
    tag = tag(this::goOn);
    rows = Pager.list(touch, row -> ListRow.plain(touch, row.heading(), row.lines()));
    sentence = Tiles.row(context.scale(), find, result, wanted);
    sentence.managedProperty().bind(sentence.visibleProperty());
    lay(Panes.column(context.scale(), sentence, rows, tag));
    refresh();
  }

  @Override
  protected void refresh() {
    find.setWords("What " + model.unknown().map(AmountInput::words).orElse("…"));
    result.setWords("gives " + model.result().map(ResultValue::words).orElse("…"));
    wanted.setWords("= " + (model.wanted().isEmpty() ? "…" : model.wanted() + "?"));
    sentence.setVisible(model.unknown().isPresent());
    result.offer(model.unknown().isPresent() && !model.results().isEmpty());
    wanted.offer(model.result().isPresent());
    rows.setItems(model.rows());
    tag.setWords(due(), "");
    tag.setVisible(model.wanted().isEmpty() || model.findText().isPresent());
  }

  /** What is to be said next; then what comes of it. */
  private String due() {
    if (model.unknown().isEmpty()) {
      return touch.brief("Choose the figure to find", "Which figure?");
    }
    if (model.result().isEmpty()) {
      return touch.brief("Choose the result that is wanted", "Which result?");
    }
    return model.wanted().isEmpty()
        ? touch.brief("Type the wanted figure", "Type it")
        : touch.brief("Put it into the working", "Put it in");
  }

  private void goOn() {
    if (model.unknown().isEmpty()) {
      chooseUnknown();
    } else if (model.result().isEmpty()) {
      chooseResult();
    } else if (model.wanted().isEmpty()) {
      type();
    } else {
      putIn();
    }
  }

  private void chooseUnknown() {
    List<Choice<AmountInput>> choices =
        model.unknowns().stream().map(input -> new Choice<>(input, input.words(), "")).toList();
    open(() -> new ChoiceScreen<>(context, "What figure?", choices, this::find));
  }

  private void chooseResult() {
    List<Choice<ResultValue>> choices =
        model.results().stream().map(value -> new Choice<>(value, value.words(), "")).toList();
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
