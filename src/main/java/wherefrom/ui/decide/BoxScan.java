package wherefrom.ui.decide;

import wherefrom.job.money.PartNumbers;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;

/** The number on a box was scanned: its line is checked in, or the number is wrong. */
final class BoxScan {
  private BoxScan() {}

  static void take(ScreenContext context, Scanned scanned) {
    if (scanned.isTyped()) {
      take(context, scanned.text());
    } else {
      context.refuse(scanned.getFound(), "Scan the number on the box of what came.");
    }
  }

  private static void take(ScreenContext context, String number) {
    PartNumbers.find(context.state(), number)
        .ifPresentOrElse(
            line -> new BuyAsking(context, line).askScanned(),
            () -> context.refuse("Not on the list", PartNumbers.unknown(context.state(), number)));
  }
}
