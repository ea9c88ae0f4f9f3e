package wherefrom.scan.camera;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import wherefrom.job.image.Camera;

/**
 * What FFmpeg is to open for a camera. A camera's id is {@code format:source}; {@code file:} and
 * {@code lavfi:} stand for clips and generated pictures, the rest for devices.
 *
 * @param title what a person calls it
 * @param format FFmpeg's input format; empty to find it from the file
 * @param source what the format opens
 * @param attempts options to try, one set after the other: not every camera knows every size
 * @param isDevice whether it sends frames for ever, at its own pace
 */
record CameraInput(
    String title,
    String format,
    String source,
    List<Map<String, String>> attempts,
    boolean isDevice) {
  private static final Map<String, String> NONE = Map.of();
  private static final Map<String, String> SIZE = Map.of("video_size", "1280x720");
  private static final Map<String, String> SIZE_AND_RATE =
      Map.of("video_size", "1280x720", "framerate", "30");

  /** Raw pictures of this size fill a USB 2 line at a few a second: ask for JPEG pictures first. */
  private static final Map<String, String> V4L2_JPEG =
      Map.of("video_size", "1280x720", "framerate", "30", "input_format", "mjpeg");

  private static final Map<String, String> DSHOW_JPEG =
      Map.of("video_size", "1280x720", "framerate", "30", "vcodec", "mjpeg");

  CameraInput {
    attempts = List.copyOf(attempts);
  }

  static CameraInput of(Camera camera) {
    String id = camera.id();
    int colon = id.indexOf(':');
    if (colon < 1) {
      throw new IllegalArgumentException("not format:source: " + id);
    }
    String format = id.substring(0, colon);
    String source = id.substring(colon + 1);
    return switch (format) {
      case "file" -> new CameraInput(camera.title(), "", id, List.of(NONE), false);
      case "lavfi" -> new CameraInput(camera.title(), format, source, List.of(NONE), false);
      case "v4l2" -> device(camera, format, source, List.of(V4L2_JPEG, SIZE, NONE));
      case "dshow" -> device(camera, format, "video=" + source, List.of(DSHOW_JPEG, SIZE, NONE));
      default -> device(camera, format, source, List.of(SIZE_AND_RATE, SIZE, NONE));
    };
  }

  private static CameraInput device(
      Camera camera, String format, String source, List<Map<String, String>> attempts) {
    return new CameraInput(camera.title(), format, source, attempts, true);
  }

  /** A clip that begins again for ever, at 30 frames a second. */
  static Camera endlessClip(Path file) {
    String name = escape(escape(file.toAbsolutePath().toString(), "\\':"), "\\'[],;");
    String graph = "movie=filename=" + name + ":loop=0,setpts=N/30/TB,realtime";
    return new Camera("lavfi:" + graph, String.valueOf(file.getFileName()));
  }

  /** FFmpeg's graphs take off two layers of backslashes: one of the option, one of the graph. */
  private static String escape(String text, String special) {
    StringBuilder escaped = new StringBuilder();
    for (int at = 0; at < text.length(); at++) {
      char character = text.charAt(at);
      if (special.indexOf(character) >= 0) {
        escaped.append('\\');
      }
      escaped.append(character);
    }
    return escaped.toString();
  }

  static Camera testPicture(int width, int height) {
    return new Camera(
        "lavfi:testsrc2=size=" + width + "x" + height + ":rate=30,realtime", "Test picture");
  }
}
