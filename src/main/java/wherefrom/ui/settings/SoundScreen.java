package wherefrom.ui.settings;

import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.rules.Cue;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;

/** Sound on or off, and each cue to be heard once. */
public final class SoundScreen implements Screen {
  private final Desk desk;
  private final VBox view;

  public SoundScreen(Desk desk) {
    this.desk = desk;
    Touch touch = desk.touch();
    view =
        Panes.column(
            desk.scale(),
            touch.text(
                "Sound only repeats what the screen shows. One high tone: right. Two low"
                    + " tones: stop. One middle tone: question."),
            touch.toggle(
                "Sound", desk.settings().sound(), on -> desk.change(desk.settings().withSound(on))),
            Tiles.row(
                desk.scale(),
                touch.primary("Hear right", () -> desk.sounds().play(Cue.RIGHT)),
                touch.primary("Hear stop", () -> desk.sounds().play(Cue.STOP)),
                touch.primary("Hear question", () -> desk.sounds().play(Cue.ASK)),
                touch.primary("Quiet", () -> desk.sounds().hush())));
  }

  @Override
  public String title() {
    return "Sound";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void hidden() {
    desk.sounds().hush();
  }

  @Override
  public boolean onJob() {
    return false;
  }
}
