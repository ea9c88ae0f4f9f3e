package wherefrom.scan.camera;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import wherefrom.job.image.Camera;

/** The video devices of one kind of system. */
interface DeviceList {
  List<Camera> list() throws IOException;

  /**
   * The list for a system.
   *
   * @param osName the system property {@code os.name}
   */
  static DeviceList of(String osName) {
    String name = osName.toLowerCase(Locale.ROOT);
    if (name.startsWith("windows")) {
      return new DirectShowDevices();
    }
    return name.startsWith("mac") ? new AvFoundationDevices() : LinuxDevices.ofSystem();
  }
}
