package wherefrom.ui.settings;

import wherefrom.rules.Cue;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Page;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;

/** Sound on or off, and each cue to be heard once. */
public final class SoundScreen extends Page {
  public SoundScreen(Desk desk) {
    super(desk, "Sound", false);
    Touch touch = desk.touch();
    lay(
        Panes.column(
            desk.scale(),
            touch.text(
                "Sound only repeats what the screen shows. One high tone: right. Two low"
                    + " tones: stop. One middle tone: question."),
            touch.toggle(
                "Sound", desk.settings().sound(), on -> desk.change(desk.settings().withSound(on))),
            Tiles.row(
                desk.scale(),
                touch.key("Hear right", () -> desk.sounds().play(Cue.RIGHT)),
                touch.key("Hear stop", () -> desk.sounds().play(Cue.STOP)),
                touch.key("Hear question", () -> desk.sounds().play(Cue.ASK)),
                touch.key("Quiet", () -> desk.sounds().hush()))));
  }

  @Override
  public void hidden() {
    desk.sounds().hush();
  }
}
