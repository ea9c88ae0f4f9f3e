package wherefrom.scan.camera;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.image.Camera;

class DeviceListsTest {

  @TempDir Path folder;

  private void node(int number, String name, int index) throws IOException {
    Path attributes = Files.createDirectories(folder.resolve("sys/video" + number));
    Files.writeString(attributes.resolve("name"), name + "\n");
    Files.writeString(attributes.resolve("index"), index + "\n");
    Files.createFile(Files.createDirectories(folder.resolve("dev")).resolve("video" + number));
  }

  @Test
  void linuxCamerasAreListedByNumberWithoutTheirSecondNodes() throws IOException {
    node(10, "Bench camera", 0);
    node(2, "Lid camera", 0);
    node(3, "Lid camera", 1);
    Files.createFile(folder.resolve("dev/video-notes"));
    assertThat(new LinuxDevices(folder.resolve("sys"), folder.resolve("dev")).list())
        .containsExactly(
            new Camera("v4l2:" + folder.resolve("dev/video2"), "Lid camera"),
            new Camera("v4l2:" + folder.resolve("dev/video10"), "Bench camera"));
  }

  @Test
  void linuxCamerasAreListedWithoutTheKernelsFiles() throws IOException {
    Files.createFile(Files.createDirectories(folder.resolve("dev")).resolve("video0"));
    assertThat(new LinuxDevices(folder.resolve("none"), folder.resolve("dev")).list())
        .containsExactly(new Camera("v4l2:" + folder.resolve("dev/video0"), "video0"));
    assertThat(new LinuxDevices(folder.resolve("none"), folder.resolve("none")).list()).isEmpty();
  }

  /** The form of the list in the manual of FFmpeg's devices, with names made up. */
  @Test
  void macCamerasAreReadFromTheLog() {
    List<String> log =
        List.of(
            "[AVFoundation indev @ 0x7f8] ",
            "AVFoundation video devices:\n",
            "[AVFoundation indev @ 0x7f8] ",
            "[0] Lid camera\n",
            "[AVFoundation indev @ 0x7f8] [1] Bench camera (4K)\n",
            "[AVFoundation indev @ 0x7f8] [2] Capture screen 0\n",
            "[AVFoundation indev @ 0x7f8] AVFoundation audio devices:\n",
            "[AVFoundation indev @ 0x7f8] [0] Microphone\n");
    assertThat(AvFoundationDevices.parse(log))
        .containsExactly(
            new Camera("avfoundation:0:none", "Lid camera"),
            new Camera("avfoundation:1:none", "Bench camera (4K)"));
  }

  @Test
  void theLogOfAnOpeningIsHeard() {
    FfmpegLibrary.load();
    assertThat(AvFoundationDevices.log("lavfi", Map.of("graph", "nosuchfilter")))
        .anyMatch(line -> line.contains("nosuchfilter"));
  }

  @Test
  void aSystemWithoutTheFormatHasNoCameras() {
    FfmpegLibrary.load();
    assertThat(new DirectShowDevices("nosuchformat").list()).isEmpty();
    assertThat(new AvFoundationDevices().list()).isEmpty();
  }

  @Test
  void aFormatThatListsItsSourcesIsAsked() {
    FfmpegLibrary.load();
    assertThat(new DirectShowDevices("video4linux2,v4l2").list())
        .allMatch(camera -> camera.id().contains("/dev/video"));
  }

  @Test
  void eachSystemHasItsList() {
    assertThat(DeviceList.of("Windows 11")).isInstanceOf(DirectShowDevices.class);
    assertThat(DeviceList.of("Mac OS X")).isInstanceOf(AvFoundationDevices.class);
    assertThat(DeviceList.of("Linux")).isInstanceOf(LinuxDevices.class);
  }
}
