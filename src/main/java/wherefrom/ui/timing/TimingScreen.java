package wherefrom.ui.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.layout.Region;
import wherefrom.job.timing.TimingBook;
import wherefrom.job.timing.TimingCheck;
import wherefrom.job.timing.TimingRecord;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.numbers.WorkingScreen;
import wherefrom.workings.ResultValue;
import wherefrom.workings.Working;
import wherefrom.workings.catalogue.timing.CamSlack;
import wherefrom.workings.catalogue.timing.ChainDeflection;

/** Chain, slack, and the cylinders whose lobes are read over the degree wheel. */
public final class TimingScreen extends ListPage {
  /**
   * A step of the check.
   *
   * @param name in few words
   * @param stands how it stands
   */
  private record Step(String heading, String name, String stands, boolean done, Runnable press) {}

  private final TimingBook book;
  private final TagKey tag;

  public TimingScreen(ScreenContext context) {
    super(context, "Timing check");
    book = new TimingBook(context.getJob());
    tag = tag(() -> next().press().run());
    layOut(tag);
  }

  private List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    steps.add(working("Deflection of the timing chain", "Chain deflection", new ChainDeflection()));
    steps.add(working("Slack from crank to cam", "Crank to cam slack", new CamSlack()));
    int unknown = new TimingCheck(book).unknown().size();
    steps.add(
        new Step(
            "Wheel and dial",
            "Wheel and dial",
            unknown == 0 ? "how far each may be off is known" : unknown + " not known yet",
            unknown == 0,
            () -> open(() -> new WheelScreen(context))));
    for (int cylinder : book.cylinders()) {
      boolean fitted = new TimingCheck(book).timing(cylinder).isPresent();
      String name = "Cylinder " + cylinder;
      String stands = fitted ? "both lobes fitted" : "lobes still open";
      steps.add(
          new Step(
              name + " with the degree wheel", name, stands, fitted, () -> cylinder(cylinder)));
    }
    return steps;
  }

  private Step degreeWheel() {
    return new Step(
        "Degree wheel on a cylinder",
        "Degree wheel",
        touch().brief("read its lobes with a dial", ""),
        false,
        this::choose);
  }

  private Step next() {
    return steps().stream().filter(step -> !step.done()).findFirst().orElseGet(this::degreeWheel);
  }

  @Override
  protected void refresh() {
    super.refresh();
    tag.setWords("Next: " + Words.small(next().name()), "");
  }

  @Override
  protected List<Region> rows() {
    List<Step> steps = steps();
    steps.add(degreeWheel());
    return steps.stream().map(this::row).toList();
  }

  private Region row(Step step) {
    return key(touch().brief(step.heading(), step.name()), step.stands(), step.press());
  }

  private Step working(String heading, String name, Working working) {
    String value = TimingRecord.value(context.getJob(), working).map(ResultValue::text).orElse("");
    return new Step(
        heading,
        name,
        value.isEmpty() ? "not checked yet" : value,
        !value.isEmpty(),
        () -> open(() -> new WorkingScreen(context, working)));
  }

  private void choose() {
    List<Choice<Integer>> cylinders =
        context.state().layout().cylinders().stream()
            .sorted()
            .map(number -> new Choice<>(number, "Cylinder " + number, ""))
            .collect(Collectors.toList());
    open(() -> new ChoiceScreen<>(context, "Which cylinder?", cylinders, this::cylinder));
  }

  private void cylinder(int cylinder) {
    open(() -> new CylinderScreen(context, cylinder));
  }
}
