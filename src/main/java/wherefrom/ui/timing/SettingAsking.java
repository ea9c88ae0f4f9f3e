package wherefrom.ui.timing;

import java.util.function.Supplier;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.job.timing.TimingBook;
import wherefrom.job.timing.TimingSetting;
import wherefrom.quantity.Dimension;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.ScreenContext;

/** Asks for what must be known before readings mean anything. */
final class SettingAsking {
  private SettingAsking() {}

  static void ask(ScreenContext context, TimingBook book, TimingSetting setting) {
    String unit =
        setting.dimension() == Dimension.ANGLE
            ? "degrees"
            : context.state().units().unit(Dimension.LENGTH).symbol();
    context
        .navigator()
        .open(
            () ->
                NumberEntryScreen.signed(
                    context,
                    "Timing check",
                    setting.words() + ", in " + unit + ".",
                    typed -> keep(context, () -> book.set(setting, typed))));
  }

  /** Keeps a figure, or says why it is none. */
  static void keep(ScreenContext context, Supplier<FigureOutcome> deed) {
    context.attempt(
        () -> {
          if (deed.get() instanceof FigureOutcome.Refused refused) {
            context.say(refused.sentence());
          }
        });
    context.navigator().changed();
  }
}
