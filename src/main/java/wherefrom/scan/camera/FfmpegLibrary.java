package wherefrom.scan.camera;

import java.io.IOException;
import org.bytedeco.ffmpeg.global.avdevice;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacpp.Loader;

/** FFmpeg's native libraries. */
final class FfmpegLibrary {
  private FfmpegLibrary() {}

  /** Loads the libraries with their devices, and keeps them from writing to the console. */
  static void load() {
    Loader.load(avdevice.class);
    avdevice.avdevice_register_all();
    avutil.av_log_set_level(avutil.AV_LOG_QUIET);
  }

  /**
   * Runs a loader of native libraries.
   *
   * @throws IOException with what to do, when the libraries cannot be used here
   */
  static void load(Runnable loader) throws IOException {
    try {
      loader.run();
    } catch (LinkageError | RuntimeException missing) {
      throw new IOException(
          "Cameras cannot be used: the camera library does not start. On Debian and"
              + " Ubuntu install libpulse0, libasound2, libdrm2 and libxcb-shm0. Scanner,"
              + " picture files and typed codes work without it.",
          missing);
    }
  }
}
