package wherefrom.ui.timing;

import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.engine.ValveSpot;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.job.timing.LiftReading;
import wherefrom.job.timing.TimingBook;
import wherefrom.job.timing.TimingCheck;
import wherefrom.quantity.Dimension;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;

/** The readings over one lobe: taken one by one, corrected, taken out. */
public final class LobeScreen extends Page {
  private static final String ANGLE =
      "Crank degrees after top dead center, minus before it. After bottom dead center add 180.";

  private final ValveSpot lobe;
  private final TimingBook book;
  private final ReadingModel model;
  private final Pager<LiftReading> rows;
  private final FitText words;

  LobeScreen(ScreenContext context, ValveSpot lobe) {
    super(context, "");
    this.lobe = lobe;
    book = new TimingBook(context.getJob());
    model = new ReadingModel(book, lobe);
    rows = Pager.list(context.touch(), this::row);
    words = touch().small("");
    lay(
        Panes.column(
            context.scale(),
            words,
            rows,
            new Foot(
                context,
                touch().tag("Add a reading", "", this::add),
                KeyRow.of(context, new KeyRow.Act("Plot", this::plot)))));
  }

  private Region row(LiftReading reading) {
    return ListRow.key(context.touch(), told(reading), List.of(), () -> choose(reading));
  }

  private void choose(LiftReading reading) {
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(() -> correct(reading), "Correct the lift", ""),
            new Choice<>(() -> remove(reading), "Take it out", "UNDO brings it back"));
    open(() -> new ChoiceScreen<>(context, reading.degrees().text(), ways, Runnable::run));
  }

  private void correct(LiftReading reading) {
    model.correct(reading);
    lift();
  }

  private void remove(LiftReading reading) {
    context.attempt(() -> said(book.remove(lobe, reading.degrees().text())));
    context.navigator().changed();
  }

  private void said(FigureOutcome kept) {
    if (kept instanceof FigureOutcome.Refused refused) {
      context.say(refused.sentence());
    }
  }

  private void add() {
    model.forget();
    open(() -> NumberEntryScreen.signed(context, title() + ": wheel", ANGLE, this::angle));
  }

  private void angle(String typed) {
    String trouble = model.take(typed);
    if (trouble.isEmpty()) {
      lift();
    } else {
      context.fail(trouble);
    }
  }

  /** One reading; in one line with large letters, too: {@code 8°: 0.0527 in}. */
  private String told(LiftReading reading) {
    String degrees = reading.degrees().text();
    String lift = reading.lift().text();
    return touch()
        .brief(degrees + "   lift " + lift, degrees.replace(" deg", "°") + ": " + lift)
        .replace('-', '−');
  }

  private void lift() {
    String unit = context.state().units().unit(Dimension.LENGTH).symbol();
    open(
        () ->
            NumberEntryScreen.signed(
                context,
                "Lift at " + model.degrees(),
                "The dial, in " + unit + ". Zero with the valve shut.",
                this::taken));
  }

  private void taken(String typed) {
    context.attempt(
        () -> {
          String trouble = model.take(typed);
          if (!trouble.isEmpty()) {
            context.fail(trouble);
          }
        });
    context.navigator().changed();
  }

  private void plot() {
    open(() -> new LiftPlotScreen(context, lobe));
  }

  @Override
  public String title() {
    return Words.capital(lobe.words());
  }

  @Override
  protected void refresh() {
    int count = book.readings(lobe).size();
    TimingCheck check = new TimingCheck(book);
    words.setWords(
        touch()
            .brief(
                "Readings: " + count + ". " + Words.capital(check.words(lobe)),
                CylinderScreen.abbreviated(check.brief(lobe))));
    rows.refill(book.readings(lobe));
  }
}
