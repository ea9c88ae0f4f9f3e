package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.layout.HBox;
import wherefrom.job.numbers.Kept;
import wherefrom.job.numbers.PlanStepper.Stepped;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
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

  public PlanScreen(Desk desk) {
    super(desk, "The plan");
    this.touch = desk.touch();
    model = new PlanModel(desk.getJob());
    table = new PlanTable(touch);
    stepped = touch.key("", this::chooseStepped);
    lay(Panes.column(desk.scale(), table, keys()));
    show();
  }

  private HBox keys() {
    KeyRow others =
        KeyRow.of(
            desk,
            new KeyRow.Act("Type it", this::type),
            new KeyRow.Act("Figures", () -> open(() -> new PlanFiguresScreen(desk, model))),
            new KeyRow.Act("Details", () -> list("Details of " + name(), model.details())),
            new KeyRow.Act("Parts, money", () -> list("Follows from " + name(), model.effects())),
            new KeyRow.Act("Plots", () -> open(() -> PlotsScreen.ofColumn(desk, model.chosen()))));
    return Panes.row(
        desk.scale(),
        Panes.wide(touch.key("−", () -> step(-1)), Scale.KEY_MM, desk.scale()),
        Panes.grow(stepped),
        Panes.wide(touch.key("+", () -> step(1)), Scale.KEY_MM, desk.scale()),
        Panes.grow(others));
  }

  private String name() {
    return model.name(model.chosen());
  }

  private void list(String title, List<ResultRows.Row> rows) {
    open(() -> new RowsScreen(desk, title, rows));
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
    desk.attempt(model::add);
    desk.navigator().changed();
  }

  private void step(int direction) {
    desk.attempt(() -> said(model.step(direction)));
    show();
  }

  private Kept said(Kept kept) {
    if (kept instanceof Kept.Refused refused) {
      desk.say(refused.sentence());
    }
    return kept;
  }

  private void chooseStepped() {
    List<Choice<Stepped>> choices =
        Stream.of(Stepped.values())
            .map(figure -> new Choice<>(figure, PlanModel.inputName(figure.key()), ""))
            .toList();
    open(() -> new ChoiceScreen<>(desk, "Step which figure?", choices, this::stepOther));
  }

  /** The screen is on again before the choice arrives. */
  private void stepOther(Stepped figure) {
    model.stepOther(figure);
    show();
  }

  private void type() {
    String key = model.stepped().key();
    if (model.chosen() == 0 && wherefrom.job.numbers.PlanGroup.isChange(key)) {
      desk.say("Choose an idea. The column Now stays as it is.");
      return;
    }
    String text = model.book().text(model.chosen(), key);
    String none = model.chosen() == 0 ? "Not known" : "As now";
    Asking.open(desk, PlanModel.input(key), text, none, model::type);
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
