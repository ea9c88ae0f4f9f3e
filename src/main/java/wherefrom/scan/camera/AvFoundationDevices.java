package wherefrom.scan.camera;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bytedeco.ffmpeg.avutil.LogCallback;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacv.FFmpegFrameGrabber;
import org.bytedeco.javacv.FrameGrabber;
import wherefrom.job.image.Camera;

/**
 * AVFoundation devices of macOS. FFmpeg has no list of them but the one it writes to its log when
 * asked to {@code list_devices}: a heading for the video devices, one for the audio devices, and a
 * line {@code [0] name} for each.
 */
final class AvFoundationDevices implements DeviceList {
  private static final String FORMAT = "avfoundation";
  private static final Pattern DEVICE = Pattern.compile("\\[(\\d+)\\] (.+)");
  private static final String SCREEN = "Capture screen";

  @Override
  public List<Camera> list() {
    return parse(log(FORMAT, Map.of("list_devices", "true")));
  }

  /** What FFmpeg writes while it opens an empty source of a format. */
  static List<String> log(String format, Map<String, String> options) {
    List<String> lines = new CopyOnWriteArrayList<>();
    LogCallback callback =
        new LogCallback() {
          @Override
          public void call(int level, BytePointer message) {
            lines.add(message.getString());
          }
        };
    avutil.av_log_set_level(avutil.AV_LOG_INFO);
    avutil.setLogCallback(callback);
    try (FFmpegFrameGrabber grabber = new FFmpegFrameGrabber("")) {
      grabber.setFormat(format);
      options.forEach(grabber::setOption);
      grabber.start();
    } catch (FrameGrabber.Exception expected) {
      // Listing always ends as an opening that failed.
    } finally {
      avutil.av_log_set_level(avutil.AV_LOG_QUIET);
      avutil.setLogCallback(null);
      callback.close();
    }
    return lines;
  }

  /** The cameras in a log. */
  static List<Camera> parse(List<String> log) {
    List<Camera> cameras = new ArrayList<>();
    boolean isVideo = false;
    for (String line : String.join("", log).lines().toList()) {
      if (line.contains("devices:")) {
        isVideo = line.contains("video devices:");
      }
      Matcher device = DEVICE.matcher(line);
      if (isVideo && device.find() && !device.group(2).startsWith(SCREEN)) {
        cameras.add(new Camera(FORMAT + ":" + device.group(1) + ":none", device.group(2).strip()));
      }
    }
    return cameras;
  }
}
