package wherefrom.scan.camera;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import wherefrom.job.image.Camera;
import wherefrom.job.image.Cameras;
import wherefrom.job.image.FrameSource;

/**
 * The cameras of this machine, through FFmpeg. Recorded clips and a test picture open by the same
 * way as a camera.
 */
public final class FfmpegCameras implements Cameras {
  private final DeviceList devices;
  private final Runnable library;

  public FfmpegCameras() {
    this(DeviceList.of(System.getProperty("os.name", "")), FfmpegLibrary::load);
  }

  FfmpegCameras(DeviceList devices, Runnable library) {
    this.devices = devices;
    this.library = library;
  }

  /** A recorded clip that begins again for ever. */
  public static Camera endlessClip(Path file) {
    return CameraInput.endlessClip(file);
  }

  /** A generated picture that moves, to try the window without a camera. */
  public static Camera testPicture(int width, int height) {
    return CameraInput.testPicture(width, height);
  }

  @Override
  public List<Camera> list() {
    try {
      FfmpegLibrary.load(library);
      return devices.list();
    } catch (IOException noCameras) {
      return List.of();
    }
  }

  /**
   * Opens a camera, a clip or the test picture. Each frame is valid until the next but one is asked
   * for: its pixels are used again.
   */
  @Override
  public FrameSource open(Camera camera) throws IOException {
    CameraInput input = CameraInput.of(camera);
    FfmpegLibrary.load(library);
    FfmpegSource source = FfmpegSource.open(input);
    return input.isDevice() ? LiveSource.start(source, input) : source;
  }
}
