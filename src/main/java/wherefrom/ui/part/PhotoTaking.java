package wherefrom.ui.part;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import wherefrom.job.Camera;
import wherefrom.job.Handling;
import wherefrom.job.OpenJob;
import wherefrom.parts.Part;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.files.FilesScreen;

/** A photograph of a part, from a picture file or from the camera. */
public final class PhotoTaking {
  private static final List<String> PICTURES = List.of(".png", ".jpg", ".jpeg");

  private PhotoTaking() {}

  /** Asks where the photograph comes from, then keeps it with the part. */
  public static void ask(Desk desk, Part part) {
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(() -> fromFile(desk, part), "From a picture file", "PNG or JPEG"),
            new Choice<>(() -> fromCamera(desk, part), "From the camera", "taken at once"));
    desk.navigator()
        .open(() -> new ChoiceScreen<>(desk, "Photo: " + part.words(), ways, Runnable::run));
  }

  private static void fromFile(Desk desk, Part part) {
    Path start = desk.settings().shop();
    desk.navigator()
        .open(
            () ->
                FilesScreen.file(
                    desk,
                    "Photo: " + part.words(),
                    start,
                    PICTURES,
                    file -> keep(desk, part, file)));
  }

  private static void keep(Desk desk, Part part, Path picture) {
    Path folder = desk.getJob().folder();
    desk.background(
        () -> desk.equipment().photos().add(folder, picture), name -> log(desk, part, name));
  }

  private static void log(Desk desk, Part part, String name) {
    OpenJob job = desk.getJob();
    desk.attempt(() -> new Handling(job).photo(part.item(), name, part.words()));
    desk.say("The photograph is kept with " + part.words() + ".");
    desk.navigator().changed();
  }

  private static void fromCamera(Desk desk, Part part) {
    List<Camera> cameras = desk.equipment().cameras().list();
    if (cameras.isEmpty()) {
      desk.say("There is no camera here. Plug one in, or take the photograph from a file.");
      return;
    }
    Camera camera =
        cameras.stream()
            .filter(each -> each.id().equals(desk.settings().camera()))
            .findFirst()
            .orElse(cameras.get(0));
    Path folder = desk.getJob().folder();
    desk.withCamera(() -> take(desk, camera, folder), name -> log(desk, part, name));
  }

  private static String take(Desk desk, Camera camera, Path folder) throws IOException {
    Path file = Files.createTempFile("photo", ".png");
    try {
      Still.take(desk.equipment().cameras(), camera, file);
      return desk.equipment().photos().add(folder, file);
    } finally {
      Files.deleteIfExists(file);
    }
  }
}
