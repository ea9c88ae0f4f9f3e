package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.inspection.measure.LimitTarget;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.BearingClearance;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.WordsScreen;
import wherefrom.ui.app.WordsScreen.Paragraph;
import wherefrom.ui.controls.TagKey;

/** The oil clearance of every bearing, as far as its pieces are measured. */
public final class ClearanceScreen extends ListPage {
  private final MeasureModel model;

  public ClearanceScreen(ScreenContext context) {
    super(context, "Oil clearance");
    model = new MeasureModel(context.getJob());
    TagKey tag = tag(this::limit);
    tag.setWords("Type the limit", touch().brief("as the engine's manual gives it", ""));
    layOut(new Foot(context, tag, KeyRow.of(context)));
  }

  @Override
  public String aside() {
    List<BearingClearance> all = model.clearances();
    return all.stream().filter(bearing -> bearing.missing().isEmpty()).count()
        + " of "
        + all.size()
        + " known";
  }

  @Override
  protected List<Region> rows() {
    return model.clearances().stream().map(this::row).toList();
  }

  private Region row(BearingClearance bearing) {
    String name = Words.capital(bearing.words());
    return key(
        name + ": " + standing(bearing),
        touch().brief(figures(bearing), ""),
        () -> open(() -> new WordsScreen(context, name, paragraphs(bearing))));
  }

  private static String standing(BearingClearance bearing) {
    if (!bearing.missing().isEmpty()) {
      return bearing.missing().size() + " to measure";
    }
    return switch (bearing.look()) {
      case NOT_LOOKED -> "no limit";
      case PASS -> "accept";
      case SUSPECT -> "undecided";
      case FAIL -> "reject";
    };
  }

  private static String figures(BearingClearance bearing) {
    return bearing.missing().isEmpty()
        ? bearing.range().map(range -> range.text()).orElse(bearing.said())
        : "Next: " + bearing.missing().get(0);
  }

  private static List<Paragraph> paragraphs(BearingClearance bearing) {
    List<Paragraph> paragraphs = new ArrayList<>();
    paragraphs.add(new Paragraph("Oil clearance", bearing.sentence()));
    if (bearing.clearance().isPresent()) {
      paragraphs.add(new Paragraph("Worked out", Words.sentence(bearing.said())));
    }
    bearing
        .judgement()
        .ifPresent(judged -> paragraphs.add(new Paragraph("Source", judged.limit().source())));
    return paragraphs;
  }

  private void limit() {
    List<Choice<ReadingPlan>> choices =
        List.of(
            new Choice<>(ReadingPlans.find("main-journal").orElseThrow(), "Main bearings", ""),
            new Choice<>(ReadingPlans.find("rod-journal").orElseThrow(), "Rod bearings", ""));
    open(
        () ->
            new ChoiceScreen<>(
                context,
                "Limit of which clearance?",
                choices,
                plan ->
                    LimitFlow.bounds(context, LimitTarget.of(plan), "clearance", "oil clearance")));
  }
}
