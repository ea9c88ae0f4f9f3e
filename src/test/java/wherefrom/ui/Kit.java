package wherefrom.ui;

import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.rules.Cue;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.VerdictCard;
import wherefrom.ui.sample.SampleWindow;

/** A screen that holds one control of the kit alone, to be looked over. */
record Kit(Region view) implements Screen {
  @Override
  public String title() {
    return "Kit";
  }

  static Region verdict(SampleWindow window, Cue cue) {
    Touch touch = window.shell.desk().touch();
    VerdictCard card = new VerdictCard(touch);
    card.show(
        cue,
        cue == Cue.RIGHT ? "right place" : "wrong place",
        cue == Cue.STOP
            ? List.of("This came from 3 EX", "You are at 5 EX", "Right part: 0151 64")
            : List.of("Pushrod of cylinder 3, exhaust"),
        "Scan the right part, or take this scan back.");
    Region ways =
        Panes.row(
            touch.scale(),
            touch.primary("Scan the right part", () -> {}),
            touch.danger("I scanned the wrong one", () -> {}));
    ((javafx.scene.layout.HBox) ways).setSpacing(touch.scale().px(13.5));
    return Panes.column(touch.scale(), card, ways);
  }
}
