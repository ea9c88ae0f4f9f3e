package wherefrom.scan.camera;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Sentences for what goes wrong with a camera: what happened and what to do. */
final class CameraFault {
  private static final Pattern ERROR_NUMBER = Pattern.compile("error (-?\\d+)");

  /** Error numbers of POSIX as FFmpeg gives them. */
  private static final int NO_SUCH_FILE = -2;

  private static final int NO_SUCH_DEVICE = -19;
  private static final int NOT_ALLOWED = -13;
  private static final int BUSY = -16;

  private CameraFault() {}

  static String ofOpening(CameraInput input, @Nullable Exception cause) {
    String name = "\"" + input.title() + "\"";
    if (!input.isDevice()) {
      return name + " cannot be opened as a clip. " + clipAdvice(input.source());
    }
    return switch (errorNumber(cause)) {
      case NO_SUCH_FILE, NO_SUCH_DEVICE ->
          "Camera " + name + " is not there. Plug it in, or choose another camera.";
      case NOT_ALLOWED ->
          "You may not use camera "
              + name
              + ". Allow it in the system's settings. On Linux, add yourself to the group"
              + " video.";
      case BUSY -> "Camera " + name + " is in use. Close the other program that uses it.";
      default ->
          "Camera "
              + name
              + " cannot be opened. Close other programs that use it. Allow it in the"
              + " system's settings. Unplug it and plug it in again.";
    };
  }

  private static String clipAdvice(String source) {
    boolean missing = source.startsWith("file:") && !Files.exists(Path.of(source.substring(5)));
    return missing
        ? "The file is not there. Check its name."
        : "The file is damaged or not a video. Record it again, or choose another.";
  }

  static String ofReading(CameraInput input) {
    if (!input.isDevice()) {
      return "\"" + input.title() + "\" is damaged. Record it again, or choose another.";
    }
    return "Camera \""
        + input.title()
        + "\" sends nothing more. Check its plug, then choose it again.";
  }

  private static int errorNumber(@Nullable Exception cause) {
    Matcher number = ERROR_NUMBER.matcher(cause == null ? "" : String.valueOf(cause.getMessage()));
    return number.find() ? Integer.parseInt(number.group(1)) : 0;
  }
}
