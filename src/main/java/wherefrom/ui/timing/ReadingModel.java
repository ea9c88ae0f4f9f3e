package wherefrom.ui.timing;

import wherefrom.engine.ValveSpot;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.job.timing.LiftReading;
import wherefrom.job.timing.TimingBook;
import wherefrom.quantity.Unit;

/** One reading on the keypad: first the wheel, then the dial. */
final class ReadingModel {
  private final TimingBook book;
  private final ValveSpot lobe;
  private String degrees = "";

  ReadingModel(TimingBook book, ValveSpot lobe) {
    this.book = book;
    this.lobe = lobe;
  }

  /** A reading that is to be corrected: its angle stands. */
  void correct(LiftReading reading) {
    degrees = reading.degrees().text();
  }

  boolean wantsDegrees() {
    return degrees.isEmpty();
  }

  String degrees() {
    return degrees;
  }

  /** Takes what was typed; what is wrong with it, or nothing. */
  String take(String typed) {
    if (typed.isEmpty()) {
      return "Type the figure first.";
    }
    if (wantsDegrees()) {
      degrees = typed + " " + Unit.DEGREE.symbol();
      return "";
    }
    FigureOutcome kept = book.read(lobe, degrees, typed);
    if (kept instanceof FigureOutcome.Refused refused) {
      return refused.sentence();
    }
    degrees = "";
    return "";
  }

  /** Leaves the angle that stands. */
  void forget() {
    degrees = "";
  }
}
