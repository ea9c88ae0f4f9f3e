package wherefrom.ui.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.layout.Region;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.job.timing.TimingBook;
import wherefrom.job.timing.TimingCheck;
import wherefrom.job.timing.TimingRecord;
import wherefrom.job.timing.TimingSetting;
import wherefrom.quantity.Dimension;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.numbers.WorkingScreen;
import wherefrom.workings.ResultValue;
import wherefrom.workings.Working;
import wherefrom.workings.catalogue.timing.CamSlack;
import wherefrom.workings.catalogue.timing.ChainDeflection;

/** Chain, slack, and the cylinders whose lobes are read over the degree wheel. */
public final class TimingScreen extends Page {
  private final TimingBook book;
  private final Pager<Region> rows;

  public TimingScreen(ScreenContext context) {
    super(context, "Timing check");
    book = new TimingBook(context.getJob());
    rows = Pager.list(context.touch(), row -> row);
    lay(rows);
  }

  @Override
  protected void refresh() {
    List<Region> lines = new ArrayList<>();
    lines.add(working("Deflection of the timing chain", new ChainDeflection()));
    lines.add(working("Slack from crank to cam", new CamSlack()));
    for (int cylinder : book.cylinders()) {
      List<String> open = new TimingCheck(book).open(cylinder);
      lines.add(
          row(
              "Cylinder " + cylinder + " with the degree wheel",
              open.isEmpty() ? "both lobes fitted" : String.join(" ", open),
              () -> cylinder(cylinder)));
    }
    lines.add(row("Degree wheel on a cylinder", "read its lobes with a dial", this::choose));
    for (TimingSetting setting : TimingSetting.values()) {
      String now = book.find(setting).map(amount -> amount.text()).orElse("not known yet");
      lines.add(row(setting.words(), now, () -> set(setting)));
    }
    rows.refill(lines);
  }

  private Region row(String heading, String words, Runnable press) {
    return ListRow.key(context.touch(), heading, List.of(words), press);
  }

  private Region working(String heading, Working working) {
    String now =
        TimingRecord.value(context.getJob(), working)
            .map(ResultValue::text)
            .orElse("not checked yet");
    return row(heading, now, () -> open(() -> new WorkingScreen(context, working)));
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

  private void set(TimingSetting setting) {
    String unit =
        setting.dimension() == Dimension.ANGLE
            ? "degrees"
            : context.state().units().unit(Dimension.LENGTH).symbol();
    open(
        () ->
            NumberEntryScreen.signed(
                context,
                "Timing check",
                setting.words() + ", in " + unit + ".",
                typed -> keep(setting, typed)));
  }

  private void keep(TimingSetting setting, String typed) {
    context.attempt(
        () -> {
          if (book.set(setting, typed) instanceof FigureOutcome.Refused refused) {
            context.say(refused.sentence());
          }
        });
    context.navigator().changed();
  }
}
