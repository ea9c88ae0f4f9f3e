package wherefrom.ui.print;

import java.util.Optional;
import wherefrom.job.print.Stock;
import wherefrom.job.settings.Settings;
import wherefrom.job.settings.Settings.UsedSheet;
import wherefrom.ui.app.ScreenContext;

/** Which sheet of labels is used in part, over the end of the program. */
interface SheetMemory {

  /** The sheet; empty where the next print begins a new one. */
  Optional<UsedSheet> used();

  /** Keeps it. */
  void keep(Optional<UsedSheet> sheet);

  /** The first label that is free on a stock: on the sheet that is used in part the next one. */
  default int firstFree(Stock of) {
    return used()
        .filter(sheet -> sheet.stock().equals(of.name()) && sheet.next() <= of.labelsPerPage())
        .map(UsedSheet::next)
        .orElse(1);
  }

  /** The next print goes on at this label; at the first where the sheet is used up. */
  default void goesOnAt(Stock of, int label) {
    keep(label > 1 ? Optional.of(new UsedSheet(of.name(), label)) : Optional.empty());
  }

  /** Kept with the settings of this machine. */
  static SheetMemory in(ScreenContext context) {
    return new SheetMemory() {
      @Override
      public Optional<UsedSheet> used() {
        return context.settings().usedSheet();
      }

      @Override
      public void keep(Optional<UsedSheet> sheet) {
        Settings settings = context.settings();
        if (!settings.usedSheet().equals(sheet)) {
          context.change(settings.withUsedSheet(sheet));
        }
      }
    };
  }
}
