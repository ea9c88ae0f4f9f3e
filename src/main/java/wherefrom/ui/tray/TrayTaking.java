package wherefrom.ui.tray;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import wherefrom.job.image.Camera;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Reading;
import wherefrom.parts.TagCode;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.files.FilesScreen;
import wherefrom.ui.photos.Still;

/** Asks for a photograph of a tray, reads it and opens what it says. */
public final class TrayTaking {
  private static final List<String> PICTURES = List.of(".png", ".jpg", ".jpeg");

  /** A photograph and what was read on it. */
  private record Taken(GreyImage picture, Reading reading) {}

  private TrayTaking() {}

  /** Asks where the photograph comes from. */
  public static void ask(Desk desk, TrayPurpose purpose) {
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(
                () -> fromFile(desk, purpose), "From a picture file", "a photograph reads best"),
            new Choice<>(() -> fromCamera(desk, purpose), "From the camera", "taken at once"));
    desk.navigator().open(() -> new ChoiceScreen<>(desk, purpose.title(), ways, Runnable::run));
  }

  private static void fromFile(Desk desk, TrayPurpose purpose) {
    desk.navigator()
        .open(
            () ->
                FilesScreen.file(
                    desk, purpose.title(), PICTURES, file -> read(desk, purpose, file)));
  }

  private static void read(Desk desk, TrayPurpose purpose, Path file) {
    Collection<TagCode> issued = desk.issued();
    desk.longWork(
        "Reading the photograph",
        () -> read(desk, file, issued),
        taken -> open(desk, purpose, taken));
  }

  private static Taken read(Desk desk, Path file, Collection<TagCode> issued) throws IOException {
    GreyImage picture = desk.equipment().pictures().load(file);
    return new Taken(picture, desk.equipment().reader().read(picture, issued));
  }

  private static void open(Desk desk, TrayPurpose purpose, Taken taken) {
    desk.navigator().open(() -> new TrayScreen(desk, purpose, taken.picture(), taken.reading()));
  }

  private static void fromCamera(Desk desk, TrayPurpose purpose) {
    List<Camera> cameras = desk.equipment().cameras().list();
    if (cameras.isEmpty()) {
      desk.say("There is no camera here. Plug one in, or use a file.");
      return;
    }
    Camera camera =
        cameras.stream()
            .filter(each -> each.id().equals(desk.settings().camera()))
            .findFirst()
            .orElse(cameras.get(0));
    Collection<TagCode> issued = desk.issued();
    desk.background(
        () -> {
          Path file = Files.createTempFile("tray", ".png");
          try {
            Still.take(desk.equipment().cameras(), camera, file);
            return read(desk, file, issued);
          } finally {
            Files.deleteIfExists(file);
          }
        },
        taken -> open(desk, purpose, taken));
  }
}
