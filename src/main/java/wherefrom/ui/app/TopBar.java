package wherefrom.ui.app;

import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.job.OpenJob;
import wherefrom.job.StillMissing;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.controls.Words;

/** Where one is, the way back, how much is still to fit, and UNDO. */
final class TopBar extends HBox {
  /** One word for the line breaker: the figure is read at a glance. */
  private static final String TO_FIT = "to\u00a0fit";

  private final Desk desk;
  private final TouchKey back;
  private final TouchKey bench;
  private final FitText title;
  private final FitText job;
  private final FitText toFit;
  private final TouchKey camera;
  private final TouchKey undo;
  private final CameraSide live;

  TopBar(Desk desk, CameraSide live, Runnable undoing, Runnable turning) {
    super(desk.scale().gap());
    this.desk = desk;
    this.live = live;
    live.writeTo(this::camera);
    Touch touch = desk.touch();
    back = touch.primary("Back", desk.navigator()::back);
    bench = touch.primary("Bench", desk.navigator()::home);
    title = touch.heading("").align(Pos.BOTTOM_LEFT);
    job = touch.small("").align(Pos.TOP_LEFT);
    toFit = touch.small("").centred();
    camera = touch.primary(touch.brief("Camera", "Cam"), turning);
    undo = touch.primary("UNDO", undoing);
    VBox names = Panes.grow(new VBox(title, job));
    names.setAlignment(Pos.CENTER_LEFT);
    names.setMinWidth(0);
    toFit.getStyleClass().add("missing");
    toFit.setMinWidth(Region.USE_PREF_SIZE);
    setAlignment(Pos.CENTER_LEFT);
    getStyleClass().add("top-bar");
    getChildren().addAll(back, bench, names, camera, toFit, undo);
  }

  /**
   * Shows where one is.
   *
   * @param depth how many screens lie below this one
   */
  void show(Screen screen, int depth) {
    boolean onJob = screen.onJob() && desk.job().isPresent();
    title.setWords(Words.capital(screen.title()));
    job.setWords(desk.job().map(TopBar::name).orElse(""));
    present(job, desk.job().isPresent());
    present(back, depth > 0);
    present(bench, desk.job().isPresent() && depth > 1);
    present(undo, onJob);
    present(camera, live.offered(screen));
    camera.select(live.on());
    present(toFit, onJob);
    if (onJob) {
      int open = new StillMissing(desk.getJob()).places().size();
      toFit.setWords(open == 0 ? "none\n" + TO_FIT : open + "\n" + TO_FIT);
    }
  }

  /** What the camera sees stands in the job's name's place where its pane has no room. */
  private void camera(String words) {
    job.setWords(words);
  }

  private static String name(OpenJob open) {
    String name = open.state().name();
    return open.condition().writable() ? name : name + " – for reading only";
  }

  private static void present(Region node, boolean there) {
    node.setVisible(there);
    node.setManaged(there);
  }
}
