package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.layout.Region;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.job.numbers.PlanStepper.Stepped;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Either;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;

/** How things are now, and up to three what-ifs, side by side. */
public final class PlanScreen extends Page {
  private final Touch touch;
  private final PlanModel model;
  private final PlanTable table;
  private final PlanColumns columns;
  private final Either plan;
  private final TagKey tag;
  private final KeyRow keys;

  public PlanScreen(ScreenContext context) {
    super(context, "The plan");
    this.touch = context.touch();
    model = new PlanModel(context.getJob());
    table = new PlanTable(touch);
    columns = new PlanColumns(touch, at -> choose(model.columns().get(at)));
    plan = new Either(room -> columns.hasRoom(room.width(), room.height()) ? columns : table);
    tag = tag(this::goOn);
    keys = KeyRow.of(context);
    Region shown = touch.scale().textFactor() > 1 ? table : plan;
    lay(Panes.column(context.scale(), shown, new Foot(context, tag, keys)));
    refresh();
  }

  /** Where the whole sentence has no room beside the title, the title says what matters. */
  @Override
  public String title() {
    return isNarrow() ? "Only a plan" : super.title();
  }

  @Override
  public String aside() {
    return isNarrow() ? "nothing is stopped yet" : "Only a plan: nothing is stopped yet";
  }

  private boolean isNarrow() {
    return touch.isLarge() || Panes.isUpright(view());
  }

  /** What follows from an idea; where there is none yet, the first. */
  private void goOn() {
    if (model.chosen() == 0) {
      add();
    } else {
      list("Follows from " + name(), model.effects());
    }
  }

  private List<KeyRow.Act> acts() {
    List<KeyRow.Act> acts = new ArrayList<>();
    if (model.chosen() > 0 && model.book().findFree().isPresent()) {
      acts.add(act("New idea", this::add));
    }
    acts.add(act("Figures", () -> open(() -> new PlanFiguresScreen(context, model))));
    acts.add(act("Shares", () -> list("Details of " + name(), model.details())));
    acts.add(act("Plots", () -> open(() -> PlotsScreen.ofColumn(context, model.chosen()))));
    acts.add(act("A step less", () -> step(-1)));
    acts.add(act("A step more", () -> step(1)));
    acts.add(act("Step " + model.steppedWords(), this::chooseStepped));
    acts.add(act("Type it", this::type));
    return acts;
  }

  private void tell() {
    boolean free = model.book().findFree().isPresent();
    tag.setVisible(model.chosen() > 0 || free);
    tag.setWords(
        model.chosen() > 0 ? name() + ": what follows" : "New idea",
        model.chosen() > 0 ? touch.brief(model.follows(), "") : touch.brief("beside now", ""));
    keys.setActs(acts());
  }

  private String name() {
    return model.name(model.chosen());
  }

  private void list(String title, List<ResultRows.Row> rows) {
    open(() -> new RowsScreen(context, title, rows));
  }

  @Override
  protected void refresh() {
    List<TouchKey> heads = new ArrayList<>();
    model.columns().forEach(column -> heads.add(head(column)));
    table.show(heads, heads.size(), model.rows(), model.columns().indexOf(model.chosen()));
    columns.show(model);
    plan.again();
    tell();
  }

  private TouchKey head(int column) {
    boolean chosen = column == model.chosen();
    TouchKey key = touch.key(model.name(column), () -> choose(column));
    // No ticked box: it would part the keys into two rows. The tag names what is chosen.
    key.setAccessibleText(model.name(column) + (chosen ? ", chosen" : ""));
    return key.stress(chosen);
  }

  private void choose(int column) {
    model.choose(column);
    refresh();
  }

  private void add() {
    context.attempt(model::add);
    context.navigator().changed();
  }

  private void step(int direction) {
    context.attempt(() -> said(model.step(direction)));
    refresh();
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
            .map(
                figure ->
                    new Choice<>(figure, PlanModel.inputName(figure.key()), "")
                        .now(figure == model.stepped()))
            .toList();
    open(() -> new ChoiceScreen<>(context, "Step which figure?", choices, this::stepOther));
  }

  /** The screen is on again before the choice arrives. */
  private void stepOther(Stepped figure) {
    model.stepOther(figure);
    refresh();
  }

  private void type() {
    String key = model.stepped().key();
    if (model.chosen() == 0 && wherefrom.job.numbers.PlanGroup.isChange(key)) {
      context.say("Choose an idea. The column Now stays as it is.");
      return;
    }
    String text = model.book().text(model.chosen(), key);
    String none = model.chosen() == 0 ? "Not known" : "As now";
    InputAsking.open(context, PlanModel.named(PlanModel.input(key)), text, none, model::type);
  }
}
