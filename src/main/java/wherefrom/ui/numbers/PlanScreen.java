package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.layout.HBox;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.job.numbers.PlanStepper.Stepped;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;

/** How things are now, and up to three what-ifs, side by side. */
public final class PlanScreen extends Page {
  private final Touch touch;
  private final PlanModel model;
  private final PlanTable table;
  private final TouchKey stepped;

  public PlanScreen(ScreenContext context) {
    super(context, "The plan");
    this.touch = context.touch();
    model = new PlanModel(context.getJob());
    table = new PlanTable(touch);
    stepped = touch.key("", this::chooseStepped);
    lay(Panes.column(context.scale(), table, keys()));
    show();
  }

  private HBox keys() {
    KeyRow others =
        KeyRow.of(
            context,
            new KeyRow.Act("Type it", this::type),
            new KeyRow.Act("Figures", () -> open(() -> new PlanFiguresScreen(context, model))),
            new KeyRow.Act("Details", () -> list("Details of " + name(), model.details())),
            new KeyRow.Act("Parts, money", () -> list("Follows from " + name(), model.effects())),
            new KeyRow.Act(
                "Plots", () -> open(() -> PlotsScreen.ofColumn(context, model.chosen()))));
    return Panes.row(
        context.scale(),
        Panes.wide(touch.key("−", () -> step(-1)), Scale.KEY_MM, context.scale()),
        Panes.grow(stepped),
        Panes.wide(touch.key("+", () -> step(1)), Scale.KEY_MM, context.scale()),
        Panes.grow(others));
  }

  private String name() {
    return model.name(model.chosen());
  }

  private void list(String title, List<ResultRows.Row> rows) {
    open(() -> new RowsScreen(context, title, rows));
  }

  private void show() {
    List<TouchKey> heads = new ArrayList<>();
    model.columns().forEach(column -> heads.add(head(column)));
    int columns = heads.size();
    model.book().findFree().ifPresent(free -> heads.add(touch.key("Add an idea", this::add)));
    table.show(heads, columns, model.rows(), model.columns().indexOf(model.chosen()));
    stepped.setWords(model.steppedWords());
  }

  private TouchKey head(int column) {
    return touch.key(model.name(column), () -> choose(column)).select(column == model.chosen());
  }

  private void choose(int column) {
    model.choose(column);
    show();
  }

  private void add() {
    context.attempt(model::add);
    context.navigator().changed();
  }

  private void step(int direction) {
    context.attempt(() -> said(model.step(direction)));
    show();
  }

  private FigureOutcome said(FigureOutcome kept) {
    if (kept instanceof FigureOutcome.Refused refused) {
      context.say(refused.sentence());
    }
    return kept;
  }

  private void chooseStepped() {
    List<Choice<Stepped>> choices =
        Stream.of(Stepped.values())
            .map(figure -> new Choice<>(figure, PlanModel.inputName(figure.key()), ""))
            .toList();
    open(() -> new ChoiceScreen<>(context, "Step which figure?", choices, this::stepOther));
  }

  /** The screen is on again before the choice arrives. */
  private void stepOther(Stepped figure) {
    model.stepOther(figure);
    show();
  }

  private void type() {
    String key = model.stepped().key();
    if (model.chosen() == 0 && wherefrom.job.numbers.PlanGroup.isChange(key)) {
      context.say("Choose an idea. The column Now stays as it is.");
      return;
    }
    String text = model.book().text(model.chosen(), key);
    String none = model.chosen() == 0 ? "Not known" : "As now";
    Asking.open(context, PlanModel.input(key), text, none, model::type);
  }

  @Override
  public void shown() {
    show();
  }

  @Override
  public void changed() {
    show();
  }
}
