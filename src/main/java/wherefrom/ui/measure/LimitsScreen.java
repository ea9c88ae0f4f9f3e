package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import wherefrom.inspection.measure.Limit;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.inspection.measure.ResultKeys;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.TagKey;

/** The limits and sizes typed for this engine, each with where it stands. */
public final class LimitsScreen extends ListPage {
  public LimitsScreen(ScreenContext context) {
    super(context, "Limits");
    TagKey tag = tag(this::limit);
    tag.setWords("Type a limit", touch().brief("as your engine's manual gives it", ""));
    layOut(new Foot(context, tag, KeyRow.of(context, act("Size when new", this::size))));
  }

  @Override
  public String aside() {
    return context.state().measures().limits().size() + " typed";
  }

  @Override
  protected String whenEmpty() {
    return "Wherefrom has no limits of its own. Type those of your engine.";
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    for (Limit limit : context.state().measures().limits()) {
      ReadingPlans.find(limit.plan()).ifPresent(plan -> rows.add(row(plan, limit)));
    }
    for (ReadingPlan plan : ReadingPlans.all()) {
      context
          .state()
          .measures()
          .findSize(plan.key())
          .ifPresent(
              size ->
                  rows.add(
                      key(
                          plan.title() + ", size when new: " + size.text(),
                          touch().brief("press to type it again", ""),
                          () -> LimitFlow.standard(context, plan))));
    }
    return rows;
  }

  private Region row(ReadingPlan plan, Limit limit) {
    String result =
        ResultKeys.find(plan, limit.result()).map(ResultKeys.Bounded::words).orElse(limit.result());
    String of = result.equals(plan.title()) ? result : plan.title() + ", " + result;
    return key(
        of + ": " + limit.words(),
        touch().brief("Source: " + limit.source(), ""),
        () -> LimitFlow.bounds(context, plan, limit.result(), result));
  }

  private void limit() {
    choose("Limit of which reading?", false, plan -> LimitFlow.ask(context, plan));
  }

  private void size() {
    choose("Size when new of what?", true, plan -> LimitFlow.standard(context, plan));
  }

  private void choose(String title, boolean sized, Consumer<ReadingPlan> done) {
    MeasureModel model = new MeasureModel(context.getJob());
    List<Choice<ReadingPlan>> choices =
        model.plans().stream()
            .filter(plan -> !sized || plan.hasStandardSize())
            .map(plan -> new Choice<>(plan, model.name(plan), ""))
            .toList();
    open(() -> new ChoiceScreen<>(context, title, choices, done));
  }
}
