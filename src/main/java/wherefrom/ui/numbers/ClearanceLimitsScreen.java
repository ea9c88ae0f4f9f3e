package wherefrom.ui.numbers;

import java.util.List;
import java.util.Optional;
import wherefrom.job.numbers.Bearings;
import wherefrom.job.numbers.ClearanceLimits;
import wherefrom.job.numbers.ClearanceLimits.Field;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.quantity.Amount;
import wherefrom.quantity.MeasuredText;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Touch;
import wherefrom.workings.AmountInput;

/** The limits of the oil clearances, typed from the engine's service information. */
public final class ClearanceLimitsScreen extends Page {
  private record Line(Bearings bearing, Field what) {}

  private static final List<Line> LINES =
      List.of(
          new Line(Bearings.MAINS, Field.LOWER),
          new Line(Bearings.MAINS, Field.UPPER),
          new Line(Bearings.MAINS, Field.SOURCE),
          new Line(Bearings.RODS, Field.LOWER),
          new Line(Bearings.RODS, Field.UPPER),
          new Line(Bearings.RODS, Field.SOURCE));

  private final Touch touch;
  private final Pager<Line> lines;

  ClearanceLimitsScreen(ScreenContext context) {
    super(context, "Limits of the oil clearance");
    this.touch = context.touch();
    lines = Pager.list(touch, line -> touch.key(words(line), () -> ask(line)).left());
    lay(lines);
    lines.setItems(LINES);
  }

  private String words(Line line) {
    String text = text(line);
    String what = line.what() == Field.SOURCE ? "manual and page" : line.what().id() + " limit";
    return (line.bearing() == Bearings.MAINS ? "Mains, " : "Rods, ")
        + what
        + ": "
        + (text.isEmpty() ? "not typed" : text);
  }

  private String text(Line line) {
    ClearanceLimits limits = ClearanceLimits.of(context.getJob(), line.bearing());
    Optional<Amount> limit = line.what() == Field.LOWER ? limits.lower() : limits.upper();
    return line.what() == Field.SOURCE ? limits.source() : limit.map(Amount::text).orElse("");
  }

  private void ask(Line line) {
    if (line.what() == Field.SOURCE) {
      open(
          () ->
              new TextEntryScreen(
                  context, "Manual and page", text(line), words -> keep(line, words)));
      return;
    }
    AmountInput input =
        AmountInput.length(line.what().id() + "-limit", "From the engine's service information.");
    InputAsking.open(
        context,
        input,
        text(line),
        "No limit",
        typed ->
            ClearanceLimits.set(
                context.getJob(), line.bearing(), line.what(), MeasuredText.value(typed)));
  }

  private void keep(Line line, String words) {
    context.attempt(
        () -> {
          if (ClearanceLimits.set(context.getJob(), line.bearing(), line.what(), words)
              instanceof FigureOutcome.Refused refused) {
            context.say(refused.sentence());
          }
        });
  }

  @Override
  protected void refresh() {
    lines.refill(LINES);
  }
}
