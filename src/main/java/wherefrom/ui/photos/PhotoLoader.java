package wherefrom.ui.photos;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Images;

/** Opens kept photographs away from the window's thread, at the size in which they are shown. */
public final class PhotoLoader {
  private static final int KEPT = 100;

  private final ScreenContext context;
  private final Path folder;
  private final Map<String, Shown> kept =
      new LinkedHashMap<>() {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Shown> eldest) {
          return size() > KEPT;
        }
      };

  public PhotoLoader(ScreenContext context) {
    this.context = context;
    this.folder = context.getJob().folder();
  }

  /**
   * Hands a photograph over on the window's thread, at once where it was shown a moment ago.
   *
   * @param longest what its longer side has at most, in pixels
   */
  void load(String file, int longest, Consumer<Shown> done) {
    String key = longest + " " + file;
    Shown before = kept.get(key);
    if (before != null) {
      done.accept(before);
      return;
    }
    context.background(
        () -> open(file, longest),
        shown -> {
          kept.put(key, shown);
          done.accept(shown);
        });
  }

  private Shown open(String name, int longest) {
    Path file = context.services().photos().locate(folder, name);
    try {
      return new Shown.APicture(Images.of(context.services().pictures().loadColour(file, longest)));
    } catch (IOException e) {
      String fault = Files.exists(file) ? "Its file is damaged." : "Its file is gone.";
      return new Shown.Nothing(fault + " Take it from the job's copy.");
    }
  }
}
