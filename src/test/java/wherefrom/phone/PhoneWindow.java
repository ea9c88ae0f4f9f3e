package wherefrom.phone;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.image.WritableImage;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.PartOut;
import wherefrom.job.phone.PhoneDoor;
import wherefrom.job.phone.PhoneHost;
import wherefrom.job.phone.Phones;
import wherefrom.job.phone.Phones.Medium;
import wherefrom.job.reader.TagReader;
import wherefrom.job.shelf.Shelf;
import wherefrom.logbook.FileShelf;
import wherefrom.logbook.PhotoFiles;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;
import wherefrom.scan.picture.PictureFiles;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleServices;
import wherefrom.ui.sample.SampleWindow;

/** The window with a real job on the disk, a real reader and a real door on this machine alone. */
final class PhoneWindow {
  private static final int WIDTH = 1280;
  private static final int HEIGHT = 800;

  /** The only network of these tests. */
  private static final class Loopback implements Phones {
    private final Phones real = new HttpPhones(System::nanoTime, new SecureRandom()::nextBytes);

    @Override
    public List<Nearby> list() {
      return List.of(new Nearby("127.0.0.1", Medium.UNKNOWN, "this computer"));
    }

    @Override
    public PhoneDoor open(Nearby at, PhoneHost host) throws IOException {
      return real.open(at, host);
    }
  }

  private final SampleWindow window;

  private PhoneWindow(SampleWindow window) {
    this.window = window;
  }

  /** Opens a job whose parts are all on the bench. */
  static PhoneWindow open(Path shop, TagReader reader) {
    Shelf shelf = new FileShelf(shop, SampleJob.CLOCK, () -> 471_100);
    Path folder = begin(shelf);
    return Toolkit.on(
        () -> {
          SampleWindow made =
              new SampleWindow(
                  96,
                  100,
                  Optional.of(shelf),
                  Runnable::run,
                  services -> arrange(services, reader));
          made.shell.context().open(shelf.open(folder));
          return new PhoneWindow(made);
        });
  }

  private static void arrange(SampleServices services, TagReader reader) {
    services.phones = new Loopback();
    services.ownReader = Optional.of(reader);
    services.ownPictures = Optional.of(new PictureFiles());
    services.ownPhotos = Optional.of(new PhotoFiles());
  }

  private static Path begin(Shelf shelf) {
    Shelf.NewJob launch =
        new Shelf.NewJob(
            "Launch V8",
            ReadyLayouts.find("v8-odd-even").orElseThrow(),
            PartKind.alwaysOn(),
            UnitSystem.INCH);
    try (OpenJob job = shelf.create(launch)) {
      List.copyOf(job.state().parts()).forEach(part -> job.record(new PartOut(part.part().item())));
      return job.folder();
    }
  }

  /** What something of the job is now. */
  <T> T ask(Function<OpenJob, T> question) {
    return Toolkit.on(() -> question.apply(window.shell.context().getJob()));
  }

  /** How many entries the job has by now. */
  long entries() {
    return ask(OpenJob::sequence);
  }

  /** Lets phones in, as a person does. */
  void letIn() {
    Toolkit.on(
        () -> {
          window.shell.context().navigator().show(ScreenId.PHONES);
          window.layOut();
          window.press("Let phones in");
          return "";
        });
  }

  void press(String words) {
    Toolkit.on(
        () -> {
          window.press(words);
          return "";
        });
  }

  /** A picture of the window as it is seen. */
  BufferedImage picture() {
    return Toolkit.on(
        () -> {
          window.layOut();
          WritableImage seen = window.scene.snapshot(new WritableImage(WIDTH, HEIGHT));
          return SwingFXUtils.fromFXImage(
              seen, new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB));
        });
  }

  /** What a camera reads in a picture of the window. */
  static String readCode(BufferedImage picture) {
    int wide = picture.getWidth();
    int high = picture.getHeight();
    int[] pixels = picture.getRGB(0, 0, wide, high, null, 0, wide);
    BinaryBitmap bitmap =
        new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(wide, high, pixels)));
    try {
      return new QRCodeReader().decode(bitmap).getText();
    } catch (ReaderException e) {
      throw new AssertionError("no code is read on the picture of the window", e);
    }
  }

  /** The words that are seen in the window. */
  String words() {
    return Toolkit.on(
        () -> {
          window.layOut();
          return window.words();
        });
  }

  void closeJob() {
    Toolkit.on(
        () -> {
          window.shell.context().closeJob();
          return "";
        });
  }
}
