package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.layout.Region;
import wherefrom.inspection.measure.ClearancePair;
import wherefrom.inspection.measure.Derivation;
import wherefrom.inspection.measure.Limit;
import wherefrom.inspection.measure.LimitTarget;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.inspection.measure.ResultKeys;
import wherefrom.job.PairClearances;
import wherefrom.quantity.Amount;
import wherefrom.text.Words;
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
    long sizes = ReadingPlans.all().stream().filter(plan -> findSize(plan).isPresent()).count();
    return context.state().measures().limits().size() + sizes + " typed";
  }

  @Override
  protected String whenEmpty() {
    return "Wherefrom has no limits of its own. Type those of your engine.";
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    for (Limit limit : context.state().measures().limits()) {
      LimitTarget.find(limit.plan()).ifPresent(target -> rows.add(row(target, limit)));
    }
    for (ReadingPlan plan : ReadingPlans.all()) {
      findSize(plan)
          .ifPresent(
              size ->
                  rows.add(
                      key(
                          plan.title()
                              + (plan.shape() == Derivation.SHIM
                                  ? ", wanted: "
                                  : ", size when new: ")
                              + size.text(),
                          touch().brief(Words.source(sizeSource(plan)), ""),
                          () -> LimitFlow.standard(context, plan))));
    }
    return rows;
  }

  private Optional<Amount> findSize(ReadingPlan plan) {
    return context.state().measures().findSize(plan.key());
  }

  private String sizeSource(ReadingPlan plan) {
    return context.state().measures().findSizeSource(plan.key()).orElse("");
  }

  private Region row(LimitTarget target, Limit limit) {
    String result =
        target.findResult(limit.result()).map(ResultKeys.Bounded::words).orElse(limit.result());
    boolean named =
        result.toLowerCase(Locale.ROOT).startsWith(target.title().toLowerCase(Locale.ROOT));
    String of = named ? Words.capital(result) : target.title() + ", " + result;
    return key(
        of + ": " + limit.words(),
        touch().brief(Words.source(limit.source()), ""),
        () -> LimitFlow.bounds(context, target, limit.result(), result));
  }

  private void limit() {
    MeasureModel model = new MeasureModel(context.getJob());
    List<Choice<LimitTarget>> choices = new ArrayList<>();
    model
        .plans()
        .forEach(plan -> choices.add(new Choice<>(LimitTarget.of(plan), model.name(plan), "")));
    for (ClearancePair pair : new PairClearances(context.state()).pairs()) {
      choices.add(new Choice<>(LimitTarget.of(pair), pair.title(), "clearance"));
    }
    open(
        () ->
            new ChoiceScreen<>(
                context,
                "Limit of which reading?",
                choices,
                target -> LimitFlow.ask(context, target)));
  }

  private void size() {
    MeasureModel model = new MeasureModel(context.getJob());
    List<Choice<ReadingPlan>> choices =
        model.plans().stream()
            .filter(ReadingPlan::hasStandardSize)
            .map(plan -> new Choice<>(plan, model.name(plan), ""))
            .toList();
    open(
        () ->
            new ChoiceScreen<>(
                context,
                "Size when new, or wanted, of what?",
                choices,
                plan -> LimitFlow.standard(context, plan)));
  }
}
