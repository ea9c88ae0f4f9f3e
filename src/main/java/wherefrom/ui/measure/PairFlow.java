package wherefrom.ui.measure;

import wherefrom.job.measure.Instruments;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.UnitSystem;
import wherefrom.ui.app.ScreenContext;

/**
 * Asks for a figure that a manual prints in inch and in millimetre, and says whether both are one
 * size. Nothing is kept.
 */
final class PairFlow {
  private PairFlow() {}

  static void ask(ScreenContext context) {
    context
        .navigator()
        .open(
            () ->
                new SizeScreen(
                    context,
                    "Printed in inches",
                    "Manuals print many figures twice, and some disagree with themselves. Type"
                        + " the inches as printed, with every digit.",
                    Dimension.LENGTH,
                    UnitSystem.INCH,
                    inch -> other(context, inch)));
  }

  private static void other(ScreenContext context, String inch) {
    context
        .navigator()
        .open(
            () ->
                new SizeScreen(
                    context,
                    inch + ": printed in millimeters",
                    "Now the millimeters printed beside it, with every digit.",
                    Dimension.LENGTH,
                    UnitSystem.METRIC,
                    millimetre ->
                        ToolFlow.Answers.say(
                            context,
                            new Instruments(context.getJob()).comparePair(inch, millimetre))));
  }
}
