package wherefrom.ui.tray;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import wherefrom.job.image.Camera;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Reading;
import wherefrom.parts.TagCode;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.OnThisJob;
import wherefrom.ui.app.PrintedElsewhere;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.files.FilesScreen;
import wherefrom.ui.photos.Still;
import wherefrom.ui.photos.StillCamera;

/** Asks for a photograph of a tray, reads it and opens what it says. */
public final class TrayTaking {
  private static final List<String> PICTURES = List.of(".png", ".jpg", ".jpeg");

  /** A photograph and what was read on it. */
  private record Taken(GreyImage picture, Reading reading) {}

  private static final String PUT_AWAY = "The photograph was not used: its job was put away.";

  private TrayTaking() {}

  /** Asks where the photograph comes from. */
  public static void ask(ScreenContext context, TrayPurpose purpose) {
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(
                () -> fromFile(context, purpose), "From a picture file", "a photograph reads best"),
            new Choice<>(() -> fromCamera(context, purpose), "From the camera", "taken at once"));
    context
        .navigator()
        .open(() -> new ChoiceScreen<>(context, purpose.title(), ways, Runnable::run));
  }

  private static void fromFile(ScreenContext context, TrayPurpose purpose) {
    context
        .navigator()
        .open(
            () ->
                FilesScreen.file(
                    context, purpose.title(), PICTURES, file -> read(context, purpose, file)));
  }

  private static void read(ScreenContext context, TrayPurpose purpose, Path file) {
    Collection<TagCode> issued = context.issued();
    Supplier<List<TagCode>> elsewhere = PrintedElsewhere.of(context);
    context.longWork(
        "Reading the photograph",
        () -> read(context, file, issued, elsewhere),
        opens(context, purpose));
  }

  private static Taken read(
      ScreenContext context,
      Path file,
      Collection<TagCode> issued,
      Supplier<List<TagCode>> elsewhere)
      throws IOException {
    GreyImage picture = context.services().pictures().load(file);
    return new Taken(picture, context.services().reader().read(picture, issued, elsewhere));
  }

  private static Consumer<Taken> opens(ScreenContext context, TrayPurpose purpose) {
    return OnThisJob.take(
        context,
        taken ->
            context
                .navigator()
                .open(() -> new TrayScreen(context, purpose, taken.picture(), taken.reading())),
        PUT_AWAY);
  }

  private static void fromCamera(ScreenContext context, TrayPurpose purpose) {
    StillCamera.find(context).ifPresent(camera -> fromCamera(context, purpose, camera));
  }

  private static void fromCamera(ScreenContext context, TrayPurpose purpose, Camera camera) {
    Collection<TagCode> issued = context.issued();
    Supplier<List<TagCode>> elsewhere = PrintedElsewhere.of(context);
    context.withCamera(
        () -> {
          Path file = Files.createTempFile("tray", ".png");
          try {
            Still.take(context.services().cameras(), camera, file);
            return read(context, file, issued, elsewhere);
          } finally {
            Files.deleteIfExists(file);
          }
        },
        opens(context, purpose));
  }
}
