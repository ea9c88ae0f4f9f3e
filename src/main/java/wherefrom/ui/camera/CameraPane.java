package wherefrom.ui.camera;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import wherefrom.job.image.Camera;
import wherefrom.job.reader.LiveAnswer;
import wherefrom.job.reader.LiveReader;
import wherefrom.job.reader.Sighting;
import wherefrom.job.reader.Unread;
import wherefrom.parts.TagCode;
import wherefrom.ui.app.LiveCamera;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;

/**
 * The live camera: its picture, what it sees, and a word on what would help. Start it when its
 * screen comes up and stop it when the screen goes.
 */
public final class CameraPane extends VBox implements LiveCamera {
  /** A room that is wider than this for its height has the hint beside the picture. */
  private static final double STRIP = 2;

  /** Parts of the width that the hint takes beside the picture: the first that holds it does. */
  private static final List<Double> BESIDE = List.of(0.25, 0.35, 0.5, 0.65);

  private final ScreenContext context;
  private final Listener listener;
  private final Preview preview = new Preview();
  private final FitText hint;
  private final AtomicReference<CameraFeed.@Nullable Shown> latest = new AtomicReference<>();
  private @Nullable CameraFeed feed;
  private List<TagCode> issued = List.of();
  private @Nullable LiveReader followed;
  private String again = CameraFeed.STOPPED;

  /** The camera that is looked through where one is set: another where that is not here. */
  public static Optional<Camera> used(List<Camera> cameras, String set) {
    return CameraFeed.choose(cameras, set);
  }

  /** Makes the pane, not yet running. */
  public CameraPane(ScreenContext context, Listener listener) {
    super(context.scale().px(1));
    this.context = context;
    this.listener = listener;
    hint = Panes.grow(context.touch().text("").align(Pos.TOP_LEFT));
    getChildren().addAll(preview, hint);
    getStyleClass().add("camera");
    Panes.grow(this);
  }

  /**
   * Says something else of a camera that stopped: what starts it again here.
   *
   * @param sentence or two
   */
  public void again(String sentence) {
    again = sentence;
  }

  @Override
  protected void layoutChildren() {
    if (!preview.isManaged()) {
      super.layoutChildren();
    } else if (getWidth() <= STRIP * getHeight()) {
      layAbove();
    } else {
      layBeside();
    }
  }

  /** The picture is as large as the hint below it lets it be. */
  private void layAbove() {
    double most = getHeight() - getSpacing() - hint.minHeight(getWidth());
    double wide = Math.floor(Math.min(getWidth(), Math.max(0, most) / preview.shape()));
    double high = Math.floor(wide * preview.shape());
    Panes.place(preview, 0, 0, wide, high);
    double y = high + getSpacing();
    Panes.place(hint, 0, y, getWidth(), Math.max(0, getHeight() - y));
  }

  private void layBeside() {
    double gap = context.scale().gap();
    double most = getWidth() - gap - hintBeside(gap);
    double wide = Math.floor(Math.min(most, getHeight() / preview.shape()));
    Panes.place(preview, 0, 0, wide, Math.floor(wide * preview.shape()));
    Panes.place(hint, wide + gap, 0, getWidth() - wide - gap, getHeight());
  }

  /** How wide the hint is beside a picture that takes the rest, in pixels. */
  private double hintBeside(double gap) {
    double all = getWidth() - gap;
    return BESIDE.stream()
        .map(part -> Math.ceil(part * all))
        .filter(wide -> hint.minWidth(-1) <= wide && hint.fits(wide, getHeight()))
        .findFirst()
        .orElse(Math.ceil(BESIDE.get(BESIDE.size() - 1) * all));
  }

  @Override
  public Region pane() {
    return this;
  }

  @Override
  public void start() {
    stop();
    hint.setWords("The camera is being opened.");
    show(true);
    CameraFeed started = new CameraFeed(context.services().cameras(), context.cameraTurn());
    feed = started;
    String id = context.settings().camera();
    List<TagCode> now = context.issued();
    context.background(() -> run(started, id, now), ended -> ended(started, ended));
  }

  /** A camera that fails says so here, beside the work, and not over it. */
  private String run(CameraFeed started, String id, List<TagCode> now) {
    Hints hints = new Hints();
    try {
      return started.run(id, () -> follow(now), frame -> post(started, hints, frame));
    } catch (IOException e) {
      return String.valueOf(e.getMessage());
    }
  }

  /**
   * What follows the frames; only called by who has the camera. The one from before goes on: a tag
   * that it has read is not read again before it has left the picture.
   */
  private LiveReader follow(List<TagCode> now) {
    LiveReader before = followed;
    if (before != null && now.equals(issued)) {
      return before;
    }
    LiveReader fresh = context.services().reader().live(now);
    issued = now;
    followed = fresh;
    return fresh;
  }

  @Override
  public void stop() {
    CameraFeed running = feed;
    if (running != null) {
      running.stop();
    }
    feed = null;
  }

  private void show(boolean picture) {
    preview.setVisible(picture);
    preview.setManaged(picture);
  }

  private void ended(CameraFeed which, String sentence) {
    if (which.equals(feed) && !sentence.isEmpty()) {
      boolean stopped = sentence.equals(CameraFeed.STOPPED);
      hint.setWords(stopped ? again : sentence);
      show(preview.hasPicture());
      listener.brief(sentence.equals(CameraFeed.NO_CAMERA) ? "no camera here" : "no picture");
      listener.failed(sentence);
    }
  }

  /** Called by the camera's thread. A reading is always handed over; pictures may be left out. */
  private void post(CameraFeed from, Hints hints, CameraFeed.Shown frame) {
    boolean waiting = latest.getAndSet(frame) != null;
    hints
        .accept(frame.answer())
        .ifPresent(asked -> Platform.runLater(() -> hand(from, listener::ask, asked)));
    if (frame.answer() instanceof LiveAnswer.Read tag) {
      Platform.runLater(() -> hand(from, listener::read, tag.sighting().text()));
    }
    if (!waiting) {
      Platform.runLater(() -> show(from));
    }
  }

  private void hand(CameraFeed from, Consumer<String> to, String text) {
    if (from.equals(feed)) {
      to.accept(text);
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
    listener.brief(brief(answer));
  }

  private static List<Sighting> seen(LiveAnswer answer) {
    return answer.match(
        nothing -> List.of(),
        read -> List.of(read.sighting()),
        still -> List.of(still.sighting()),
        LiveAnswer.Several::sightings);
  }

  private static String words(LiveAnswer answer) {
    String read = "Read. Take the tag away before the next one.";
    return answer.match(
        nothing -> nothing.hint().map(Unread.Cause::hint).orElse("Show a tag to the camera."),
        one -> read,
        one -> read,
        Hints::tooMany);
  }

  private static String brief(LiveAnswer answer) {
    return answer.match(
        nothing -> nothing.hint().isPresent() ? "not read yet" : "looking",
        read -> "tag read",
        still -> "tag read",
        several -> "several tags");
  }
}
