package wherefrom.ui.measure;

import wherefrom.job.measure.Instruments;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.UnitSystem;
import wherefrom.ui.app.Desk;

/**
 * Asks for a figure that a manual prints in inch and in millimetre, and says whether both are one
 * size. Nothing is kept.
 */
final class PairFlow {
  private PairFlow() {}

  static void ask(Desk desk) {
    desk.navigator()
        .open(
            () ->
                new SizeScreen(
                    desk,
                    "Printed in inches",
                    "Manuals print many figures twice, and some disagree with themselves. Type"
                        + " the inches as printed, with every digit.",
                    Dimension.LENGTH,
                    UnitSystem.INCH,
                    inch -> other(desk, inch)));
  }

  private static void other(Desk desk, String inch) {
    desk.navigator()
        .open(
            () ->
                new SizeScreen(
                    desk,
                    inch + ": printed in millimeters",
                    "Now the millimeters printed beside it, with every digit.",
                    Dimension.LENGTH,
                    UnitSystem.METRIC,
                    millimetre ->
                        ToolFlow.Answers.say(
                            desk, new Instruments(desk.getJob()).comparePair(inch, millimetre))));
  }
}
