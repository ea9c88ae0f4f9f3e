package wherefrom.scan.camera;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.IntStream;
import org.bytedeco.javacv.FFmpegFrameGrabber;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.job.image.Camera;
import wherefrom.job.image.FrameSource;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;

/**
 * What a frame for the preview and the reader costs, against reading the same clip with the bare
 * grabber, which gives colours only and copies nothing. No goal is set: the figure is printed, and
 * asserted is that both read every frame.
 */
@Tag("bench")
class FramePathBench {
  private static final TagCode TAG = new TagCode(TagType.PART, 4_711_023, 17, 1);
  private static final int FRAMES = 60;
  private static final int ROUNDS = 12;
  private static final double NANOS_PER_MS = 1e6;

  @TempDir Path folder;

  private interface Run {
    int frames() throws IOException;
  }

  @ParameterizedTest
  @CsvSource({
    "1280, 720, clip.avi",
    "1280, 720, clip.mp4",
    "1920, 1080, clip.avi",
    "1920, 1080, clip.mp4"
  })
  void framesAgainstTheBareGrabber(int width, int height, String name) throws IOException {
    Path clip =
        ClipMaker.write(
            folder.resolve(name),
            IntStream.range(0, FRAMES)
                .mapToObj(frame -> TagPictures.of(TAG, width, height, frame * 6))
                .toList());
    double ours = Double.MAX_VALUE;
    double bare = Double.MAX_VALUE;
    for (int round = 0; round < ROUNDS; round++) {
      bare = Math.min(bare, msPerFrame(() -> readBare(clip)));
      ours = Math.min(ours, msPerFrame(() -> readOurs(clip)));
    }
    double ratio = ours / bare;
    System.out.printf(
        Locale.ROOT,
        "%d x %d %s: %.2f ms a frame, bare grabber %.2f ms, ratio %.2f%n",
        width,
        height,
        name,
        ours,
        bare,
        ratio);
  }

  private static double msPerFrame(Run run) throws IOException {
    long start = System.nanoTime();
    int frames = run.frames();
    double ms = (System.nanoTime() - start) / NANOS_PER_MS;
    assertThat(frames).isEqualTo(FRAMES);
    return ms / frames;
  }

  private static int readOurs(Path clip) throws IOException {
    int frames = 0;
    try (FrameSource source = new FfmpegCameras().open(Camera.ofClip(clip))) {
      while (source.next().isPresent()) {
        frames++;
      }
    }
    return frames;
  }

  private static int readBare(Path clip) throws IOException {
    int frames = 0;
    try (FFmpegFrameGrabber grabber = new FFmpegFrameGrabber(clip.toFile())) {
      grabber.start();
      while (grabber.grabImage() != null) {
        frames++;
      }
    }
    return frames;
  }
}
