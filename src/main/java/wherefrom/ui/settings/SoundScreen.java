package wherefrom.ui.settings;

import wherefrom.rules.Cue;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;

/** Sound on or off, and each cue to be heard once. */
public final class SoundScreen extends Page {
  public SoundScreen(ScreenContext context) {
    super(context, "Sound", false);
    Touch touch = context.touch();
    lay(
        Panes.column(
            context.scale(),
            touch.text(
                "Sound only repeats what the screen shows. One high tone: right. Two low"
                    + " tones: stop. One middle tone: question."),
            touch.toggle(
                "Sound",
                context.settings().sound(),
                on -> context.change(context.settings().withSound(on))),
            Tiles.row(
                context.scale(),
                touch.key("Hear right", () -> context.sounds().play(Cue.RIGHT)),
                touch.key("Hear stop", () -> context.sounds().play(Cue.STOP)),
                touch.key("Hear question", () -> context.sounds().play(Cue.ASK)),
                touch.key("End the tone", () -> context.sounds().hush()))));
  }

  @Override
  public void hidden() {
    context.sounds().hush();
  }
}
