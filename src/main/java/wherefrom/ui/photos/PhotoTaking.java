package wherefrom.ui.photos;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import wherefrom.inspection.Subject;
import wherefrom.job.OpenJob;
import wherefrom.job.image.Camera;
import wherefrom.job.photos.Photograph;
import wherefrom.job.photos.Photographing;
import wherefrom.parts.Part;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.OnThisJob;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.files.FilesScreen;

/** A photograph of a part or of anything else, from a picture file or from the camera. */
public final class PhotoTaking {
  /** HEIC files are listed, too: who taps one is told what to do. */
  private static final List<String> PICTURES = List.of(".png", ".jpg", ".jpeg", ".heic", ".heif");

  private static final String PUT_AWAY = "The photograph was not kept: its job was put away.";

  private PhotoTaking() {}

  /** Asks where the photograph comes from, then keeps it with the part. */
  public static void ask(ScreenContext context, Part part) {
    ask(context, Optional.of(Subject.ofPart(part.item())), "");
  }

  /**
   * Asks where the photograph comes from, then keeps it.
   *
   * @param subject what it shows; empty for the whole engine
   * @param check the quick test that it belongs to; may be empty
   */
  public static void ask(ScreenContext context, Optional<Subject> subject, String check) {
    ask(context, new About(subject, check, Photograph.words(context.state(), subject)));
  }

  /** What the photograph is to show, and its name. */
  private record About(Optional<Subject> subject, String check, String words) {}

  private static void ask(ScreenContext context, About about) {
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(
                () -> fromFile(context, about), "From a picture file", "PNG or JPEG, not HEIC"),
            new Choice<>(() -> fromCamera(context, about), "From the camera", "taken at once"));
    context
        .navigator()
        .open(() -> new ChoiceScreen<>(context, "Photo: " + about.words(), ways, Runnable::run));
  }

  private static void fromFile(ScreenContext context, About about) {
    context
        .navigator()
        .open(
            () ->
                FilesScreen.file(
                    context,
                    "Photo: " + about.words(),
                    PICTURES,
                    file -> keep(context, about, file)));
  }

  private static void keep(ScreenContext context, About about, Path picture) {
    OpenJob job = context.getJob();
    Path folder = job.folder();
    if (!context.attempt(() -> new Photographing(job).require(about.subject()))) {
      return;
    }
    context.longWork(
        "Keeping the photograph",
        context.writings().of(() -> context.services().photos().add(folder, picture)),
        logs(context, job, about));
  }

  private static Consumer<String> logs(ScreenContext context, OpenJob job, About about) {
    return OnThisJob.take(context, name -> log(context, job, about, name), PUT_AWAY);
  }

  private static void log(ScreenContext context, OpenJob job, About about, String name) {
    boolean kept =
        context.attempt(() -> new Photographing(job).add(about.subject(), about.check(), name, ""));
    if (kept) {
      context.say("The photograph is kept with " + about.words() + ".");
    }
    context.navigator().changed();
  }

  private static void fromCamera(ScreenContext context, About about) {
    StillCamera.find(context).ifPresent(camera -> fromCamera(context, about, camera));
  }

  private static void fromCamera(ScreenContext context, About about, Camera camera) {
    OpenJob job = context.getJob();
    Path folder = job.folder();
    if (!context.attempt(() -> new Photographing(job).require(about.subject()))) {
      return;
    }
    context.withCamera(
        context.writings().of(() -> take(context, camera, folder)), logs(context, job, about));
  }

  private static String take(ScreenContext context, Camera camera, Path folder) throws IOException {
    Path file = Files.createTempFile("photo", ".png");
    try {
      Still.take(context.services().cameras(), camera, file);
      return context.services().photos().add(folder, file);
    } finally {
      Files.deleteIfExists(file);
    }
  }
}
