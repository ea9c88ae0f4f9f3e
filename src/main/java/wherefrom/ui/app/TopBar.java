package wherefrom.ui.app;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wherefrom.job.OpenJob;
import wherefrom.job.puttogether.StillMissing;
import wherefrom.text.Words;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.MessageBand;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.SayingKey;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;

/**
 * Where one is, the way back, how much is still to fit, and UNDO, which says what it would take
 * back. Between the way back and UNDO messages have their place.
 */
final class TopBar extends HBox {
  private final Desk desk;
  private final TouchKey back;
  private final TouchKey bench;
  private final FitText title;
  private final FitText job;
  private final TouchKey camera;
  private final Region undo;
  private final HBox where;
  private final MessageBand message;
  private final CameraSide live;

  TopBar(Desk desk, CameraSide live, Runnable undoing, Runnable turning, MessageBand message) {
    super(desk.scale().gap());
    this.desk = desk;
    this.live = live;
    this.message = message;
    live.writeTo(this::camera);
    Touch touch = desk.touch();
    back = touch.primary("Back", desk.navigator()::back);
    bench = touch.primary("Bench", desk.navigator()::home);
    title = touch.heading("").align(Pos.BOTTOM_LEFT);
    job = touch.small("").align(Pos.TOP_LEFT).within(1);
    camera = touch.primary(touch.brief("Camera", "Cam"), turning);
    undo = touch.isLarge() ? touch.primary("UNDO", undoing) : new SayingKey(touch, "UNDO", undoing);
    VBox names = Panes.grow(new VBox(title, job));
    names.setAlignment(Pos.CENTER_LEFT);
    names.setMinWidth(0);
    // Large words need the room of the key as well.
    where = Panes.row(desk.scale(), names, camera);
    if (touch.isLarge()) {
      where.getChildren().add(0, bench);
    }
    where.setAlignment(Pos.CENTER_LEFT);
    setAlignment(Pos.CENTER_LEFT);
    getStyleClass().add("top-bar");
    getChildren()
        .setAll(
            touch.isLarge() ? List.of(back, middle(), undo) : List.of(back, bench, middle(), undo));
    where.visibleProperty().bind(message.visibleProperty().not());
  }

  /** Whatever stands here, the keys beside it have the width that they like. */
  private StackPane middle() {
    StackPane middle = Panes.grow(new StackPane(where, message));
    middle.setPrefWidth(0);
    return middle;
  }

  /** The place of messages. */
  MessageBand message() {
    return message;
  }

  /**
   * Shows where one is.
   *
   * @param depth how many screens lie below this one
   */
  void show(Screen screen, int depth) {
    boolean onJob = screen.onJob() && desk.job().isPresent();
    title.setWords(Words.capital(screen.title()));
    job.setWords(desk.job().map(open -> onJob ? toFit(open) + name(open) : name(open)).orElse(""));
    present(job, desk.job().isPresent());
    present(back, depth > 0);
    present(bench, desk.job().isPresent() && depth > 1);
    present(undo, onJob);
    present(camera, live.offered(screen));
    camera.select(live.on());
    if (onJob && undo instanceof SayingKey saying) {
      saying.say(screen.undoes(desk));
    }
  }

  /** The count stands first: it is never cut. */
  private static String toFit(OpenJob open) {
    StillMissing missing = new StillMissing(open);
    int left = missing.places().size();
    int but = missing.fittedBut().size();
    String against = but == 0 ? "" : but + " in,\u00a0but · ";
    return (left == 0 ? "none" : left) + " to\u00a0fit · " + against;
  }

  /** What the camera sees stands in the job's name's place where its pane has no room. */
  private void camera(String words) {
    job.setWords(words);
  }

  private static String name(OpenJob open) {
    String name = open.state().name();
    return open.condition().writable() ? name : "for reading only · " + name;
  }

  private static void present(Region node, boolean there) {
    node.setVisible(there);
    node.setManaged(there);
  }
}
