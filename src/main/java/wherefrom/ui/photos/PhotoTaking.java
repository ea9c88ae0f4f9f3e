package wherefrom.ui.photos;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Subject;
import wherefrom.job.OpenJob;
import wherefrom.job.image.Camera;
import wherefrom.job.photos.Photograph;
import wherefrom.job.photos.Photographing;
import wherefrom.parts.Part;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.files.FilesScreen;

/** A photograph of a part or of anything else, from a picture file or from the camera. */
public final class PhotoTaking {
  private static final List<String> PICTURES = List.of(".png", ".jpg", ".jpeg");

  private PhotoTaking() {}

  /** Asks where the photograph comes from, then keeps it with the part. */
  public static void ask(Desk desk, Part part) {
    ask(desk, Optional.of(Subject.ofPart(part.item())), "");
  }

  /**
   * Asks where the photograph comes from, then keeps it.
   *
   * @param subject what it shows; empty for the whole engine
   * @param check the quick test that it belongs to; may be empty
   */
  public static void ask(Desk desk, Optional<Subject> subject, String check) {
    ask(desk, new About(subject, check, Photograph.words(desk.state(), subject)));
  }

  /** What the photograph is to show, and its name. */
  private record About(Optional<Subject> subject, String check, String words) {}

  private static void ask(Desk desk, About about) {
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(() -> fromFile(desk, about), "From a picture file", "PNG or JPEG"),
            new Choice<>(() -> fromCamera(desk, about), "From the camera", "taken at once"));
    desk.navigator()
        .open(() -> new ChoiceScreen<>(desk, "Photo: " + about.words(), ways, Runnable::run));
  }

  private static void fromFile(Desk desk, About about) {
    desk.navigator()
        .open(
            () ->
                FilesScreen.file(
                    desk, "Photo: " + about.words(), PICTURES, file -> keep(desk, about, file)));
  }

  private static void keep(Desk desk, About about, Path picture) {
    OpenJob job = desk.getJob();
    Path folder = job.folder();
    if (!desk.attempt(() -> new Photographing(job).require(about.subject()))) {
      return;
    }
    desk.longWork(
        "Keeping the photograph",
        () -> desk.equipment().photos().add(folder, picture),
        name -> log(desk, job, about, name));
  }

  private static void log(Desk desk, OpenJob job, About about, String name) {
    boolean kept =
        desk.attempt(() -> new Photographing(job).add(about.subject(), about.check(), name, ""));
    if (kept) {
      desk.say("The photograph is kept with " + about.words() + ".");
    }
    desk.navigator().changed();
  }

  private static void fromCamera(Desk desk, About about) {
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
    OpenJob job = desk.getJob();
    Path folder = job.folder();
    if (!desk.attempt(() -> new Photographing(job).require(about.subject()))) {
      return;
    }
    desk.withCamera(() -> take(desk, camera, folder), name -> log(desk, job, about, name));
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
