package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.job.numbers.PlanGroup;
import wherefrom.job.numbers.TakenOver;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.AskKey;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.workings.InputSpec;

/** Every figure of one column of the plan, group by group. */
public final class PlanFiguresScreen extends Page {
  private final Touch touch;
  private final PlanModel model;
  private final int column;
  private final Tiles groups;
  private final AskKey chosenGroup;
  private final Pager<InputSpec> inputs;
  private final VBox view;
  private final TouchKey takeOver;
  private PlanGroup group;

  PlanFiguresScreen(ScreenContext context, PlanModel model) {
    super(context, "");
    this.touch = context.touch();
    this.model = model;
    column = model.chosen();
    group = column == 0 ? PlanGroup.CYLINDER : PlanGroup.CUTS;
    groups = new Tiles(context.scale(), PlanGroup.values().length, Scale.GAP_MM, List.of());
    chosenGroup = AskKey.key(touch, "Group", this::askGroup);
    inputs = Pager.list(touch, this::row);
    // Large letters leave no room for a key of each group.
    view = Panes.column(context.scale(), touch.isLarge() ? chosenGroup : groups, inputs);
    lay(view);
    takeOver = touch.key("", this::takeOver);
    if (column == 0) {
      view.getChildren().add(takeOver);
    } else {
      view.getChildren()
          .add(
              Tiles.row(
                  context.scale(),
                  touch.key("Name it", this::rename),
                  touch.key("Delete it", this::drop)));
    }
    refresh();
  }

  @Override
  protected void refresh() {
    List<Node> keys = new ArrayList<>();
    for (PlanGroup each : PlanGroup.values()) {
      keys.add(touch.key(each.words(), () -> choose(each)).select(each == group));
    }
    groups.setCells(keys);
    chosenGroup.say(group.words());
    inputs.refill(group.inputs(column));
    int found = new TakenOver(model.book().job()).find().size();
    takeOver.setWords("Copy " + found + touch.brief(" figures from single workings", " figures"));
    takeOver.offer(found > 0);
    takeOver.setManaged(found > 0);
  }

  private void takeOver() {
    context.attempt(() -> new TakenOver(model.book().job()).take());
    refresh();
  }

  private void askGroup() {
    List<Choice<PlanGroup>> all =
        Stream.of(PlanGroup.values())
            .map(each -> new Choice<>(each, each.words(), "").now(each == group))
            .toList();
    open(() -> new ChoiceScreen<>(context, "Which figures?", all, this::choose));
  }

  private void choose(PlanGroup chosen) {
    group = chosen;
    inputs.setItems(List.of());
    refresh();
  }

  private Region row(InputSpec input) {
    String own = model.book().text(column, input.key());
    String now = model.book().text(0, input.key());
    String shown = own.isEmpty() ? "not known" : FigureModel.shown(own);
    if (own.isEmpty() && column > 0) {
      boolean change = PlanGroup.isChange(input.key());
      shown = change ? "no change" : now.isEmpty() ? shown : "as now, " + FigureModel.shown(now);
    }
    return ListRow.key(
        touch,
        Words.capital(PlanModel.name(input)) + ": " + shown,
        touch.isLarge() ? List.of() : List.of(input.meaning()),
        () -> ask(input));
  }

  private void ask(InputSpec input) {
    String none =
        column == 0 ? "Not known" : PlanGroup.isChange(input.key()) ? "No change" : "As now";
    InputAsking.open(
        context,
        PlanModel.named(input),
        model.book().text(column, input.key()),
        none,
        text -> model.book().set(column, input.key(), text));
  }

  private void rename() {
    open(
        () ->
            new TextEntryScreen(
                context,
                "Name of the idea",
                model.name(column),
                name -> context.attempt(() -> model.book().rename(column, name))));
  }

  private void drop() {
    if (context.attempt(() -> model.book().drop(column))) {
      context.navigator().back();
    }
  }

  @Override
  public String title() {
    return "Figures: " + model.name(column);
  }
}
