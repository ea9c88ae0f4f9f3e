package wherefrom.ui.sample;

import static java.nio.file.StandardOpenOption.CREATE_NEW;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.application.Platform;
import javafx.collections.ListChangeListener;
import javafx.stage.Window;
import javafx.stage.WindowEvent;
import wherefrom.job.image.Camera;
import wherefrom.job.image.CameraFrame;
import wherefrom.job.image.Cameras;
import wherefrom.job.image.FrameSource;
import wherefrom.job.image.GreyImage;
import wherefrom.job.ports.Sounds;
import wherefrom.job.settings.Settings;
import wherefrom.job.settings.SettingsStore;
import wherefrom.rules.Cue;
import wherefrom.ui.Start;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.Shell;

/**
 * A program of its own: the window opens, a job is put together with the camera beside it, and once
 * the camera has given some pictures the person closes the window.
 */
public final class ClosedWindow {
  private static final int PICTURES = 20;

  /** How many pieces are written while the window closes. */
  public static final int PIECES = 400;

  /** How long each of them is, in bytes. */
  public static final int PIECE = 4096;

  /** The window is being closed. */
  private static final CountDownLatch CLOSING = new CountDownLatch(1);

  private ClosedWindow() {}

  /**
   * @param arguments the file that is written while the window closes
   */
  public static void main(String[] arguments) {
    AtomicInteger pictures = new AtomicInteger();
    SampleServices services = new SampleServices();
    services.ownSettings = Optional.of(settings(services));
    services.settings = services.settings.withCameraOn(true);
    services.ownCameras = Optional.of(cameras(pictures));
    Window.getWindows().addListener(new FirstWindow(Path.of(arguments[0])));
    Start.run(services.all(), System::nanoTime, silent(), List.of(), () -> {}, () -> {});
    System.out.println("closed after " + pictures.get() + " pictures");
  }

  /** Where the window stands is kept when it closes, first of all. */
  private static SettingsStore settings(SampleServices services) {
    return new SettingsStore() {
      @Override
      public Settings load() {
        return services.settings;
      }

      @Override
      public void save(Settings kept) {
        CLOSING.countDown();
      }
    };
  }

  /** Writes piece by piece from the moment in which the window is closed. */
  private static int write(Path file) throws IOException, InterruptedException {
    CLOSING.await();
    try (FileChannel out = FileChannel.open(file, CREATE_NEW, WRITE)) {
      for (int piece = 0; piece < PIECES; piece++) {
        out.write(ByteBuffer.allocate(PIECE));
        out.force(true);
      }
    }
    return PIECES;
  }

  /** Puts a job together as soon as the window is up, and writes a file. */
  private static final class FirstWindow implements ListChangeListener<Window> {
    private final Path file;

    FirstWindow(Path file) {
      this.file = file;
    }

    @Override
    public void onChanged(Change<? extends Window> change) {
      Window.getWindows().removeListener(this);
      Platform.runLater(
          () -> {
            Shell shell = (Shell) window().getScene().getRoot();
            shell.context().open(SampleJob.apart().job);
            shell.context().navigator().show(ScreenId.PUT_TOGETHER);
            shell
                .context()
                .longWork(
                    "Writing", shell.context().writings().of(() -> write(file)), written -> {});
          });
    }
  }

  private static void close() {
    WindowEvent close = new WindowEvent(window(), WindowEvent.WINDOW_CLOSE_REQUEST);
    window().fireEvent(close);
  }

  private static Window window() {
    return Window.getWindows().get(0);
  }

  /** One camera whose picture never ends. */
  private static Cameras cameras(AtomicInteger pictures) {
    return new Cameras() {
      @Override
      public List<Camera> list() {
        return List.of(new Camera("0", "Camera over the bench"));
      }

      @Override
      public FrameSource open(Camera camera) {
        return new FrameSource() {
          @Override
          public Optional<CameraFrame> next() {
            if (pictures.incrementAndGet() == PICTURES) {
              Platform.runLater(ClosedWindow::close);
            }
            return Optional.of(
                new CameraFrame(new GreyImage(64, 48, new byte[64 * 48]), new byte[4 * 64 * 48]));
          }

          @Override
          public void close() {}
        };
      }
    };
  }

  private static Sounds silent() {
    return new Sounds() {
      @Override
      public void play(Cue cue) {}

      @Override
      public void setVolume(double volume) {}
    };
  }
}
