package wherefrom.scan.camera;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wherefrom.job.image.Camera;

/**
 * Video4Linux devices, from the kernel's files: {@code name} is what the driver calls the camera,
 * {@code index} counts the nodes of one camera. The first node sends pictures; later ones of USB
 * cameras send descriptions of pictures only.
 */
record LinuxDevices(Path sysfs, Path dev) implements DeviceList {
  /** Made when cameras are first looked for: the window's first picture does without. */
  private static final class Nodes {
    static final Pattern FORM = Pattern.compile("video(\\d+)");
  }

  static LinuxDevices ofSystem() {
    return new LinuxDevices(Path.of("/sys/class/video4linux"), Path.of("/dev"));
  }

  @Override
  public List<Camera> list() throws IOException {
    if (!Files.isDirectory(dev)) {
      return List.of();
    }
    List<Path> nodes = new ArrayList<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(dev, "video*")) {
      for (Path file : files) {
        if (Nodes.FORM.matcher(name(file)).matches() && read(file, "index", "0").equals("0")) {
          nodes.add(file);
        }
      }
    }
    nodes.sort(Comparator.comparingInt(LinuxDevices::number));
    return nodes.stream().map(this::camera).toList();
  }

  private Camera camera(Path node) {
    return new Camera("v4l2:" + node, read(node, "name", name(node)));
  }

  private String read(Path node, String attribute, String otherwise) {
    try {
      String text = Files.readString(sysfs.resolve(name(node)).resolve(attribute)).strip();
      return text.isEmpty() ? otherwise : text;
    } catch (IOException noSuchAttribute) {
      return otherwise;
    }
  }

  private static String name(Path node) {
    return String.valueOf(node.getFileName());
  }

  private static int number(Path node) {
    Matcher matcher = Nodes.FORM.matcher(name(node));
    return matcher.matches() ? Integer.parseInt(matcher.group(1)) : Integer.MAX_VALUE;
  }
}
