package wherefrom.ui.camera;

import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import wherefrom.job.LiveAnswer;
import wherefrom.job.Sighting;
import wherefrom.job.Unread;
import wherefrom.parts.TagCode;
import wherefrom.ui.app.Desk;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;

/**
 * The live camera: its picture, what it sees, and a word on what would help. Start it when its
 * screen comes up and stop it when the screen goes.
 */
public final class CameraPane extends VBox {
  private final Desk desk;
  private final Consumer<String> read;
  private final Preview preview = Panes.grow(new Preview());
  private final FitText hint;
  private final AtomicReference<CameraFeed.@Nullable Shown> latest = new AtomicReference<>();
  private @Nullable CameraFeed feed;

  /**
   * Makes the pane, not yet running.
   *
   * @param read given the text of a tag once, when it has come into view
   */
  public CameraPane(Desk desk, Consumer<String> read) {
    super(desk.scale().px(1));
    this.desk = desk;
    this.read = read;
    hint = desk.touch().text("").centred();
    getChildren().addAll(preview, hint);
    getStyleClass().add("camera");
    Panes.grow(this);
  }

  /** Opens the camera that was chosen in the settings and reads until {@link #stop}. */
  public void start() {
    stop();
    hint.setWords("The camera is being opened.");
    CameraFeed started = new CameraFeed(desk.equipment().cameras(), desk.equipment().reader());
    feed = started;
    String id = desk.settings().camera();
    List<TagCode> issued = desk.issued();
    desk.background(
        () -> started.run(id, issued, frame -> post(started, frame)),
        ended -> ended(started, ended));
  }

  public void stop() {
    CameraFeed running = feed;
    if (running != null) {
      running.stop();
    }
    feed = null;
  }

  /** What the pane says below the picture. */
  public String hint() {
    return hint.words();
  }

  private void ended(CameraFeed which, String sentence) {
    if (which.equals(feed) && !sentence.isEmpty()) {
      hint.setWords(sentence);
    }
  }

  /** Called by the camera's thread. A reading is always handed over; pictures may be left out. */
  private void post(CameraFeed from, CameraFeed.Shown frame) {
    boolean waiting = latest.getAndSet(frame) != null;
    if (frame.answer() instanceof LiveAnswer.Read tag) {
      Platform.runLater(() -> hand(from, tag.sighting().text()));
    }
    if (!waiting) {
      Platform.runLater(() -> show(from));
    }
  }

  private void hand(CameraFeed from, String text) {
    if (from.equals(feed)) {
      read.accept(text);
    }
  }

  private void show(CameraFeed from) {
    CameraFeed.Shown frame = latest.getAndSet(null);
    if (frame == null || !from.equals(feed)) {
      return;
    }
    LiveAnswer answer = frame.answer();
    preview.show(frame, seen(answer));
    hint.setWords(words(answer));
  }

  private static List<Sighting> seen(LiveAnswer answer) {
    if (answer instanceof LiveAnswer.Read one) {
      return List.of(one.sighting());
    }
    if (answer instanceof LiveAnswer.StillThere one) {
      return List.of(one.sighting());
    }
    return answer instanceof LiveAnswer.Several several ? several.sightings() : List.of();
  }

  private static String words(LiveAnswer answer) {
    if (answer instanceof LiveAnswer.Several several) {
      return several.sightings().size() + " tags in view: cover all but one.";
    }
    if (answer instanceof LiveAnswer.Nothing nothing) {
      return nothing.hint().map(Unread.Cause::hint).orElse("Show a tag to the camera.");
    }
    return "Read. Take the tag away before the next one.";
  }
}
