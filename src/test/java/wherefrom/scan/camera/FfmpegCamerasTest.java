package wherefrom.scan.camera;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacv.FFmpegFrameGrabber;
import org.bytedeco.javacv.Frame;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.job.image.Camera;
import wherefrom.job.image.CameraFrame;
import wherefrom.job.image.FrameSource;
import wherefrom.job.image.GreyImage;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;

class FfmpegCamerasTest {
  private static final TagCode TAG = new TagCode(TagType.PART, 4_711_023, 17, 1);
  private static final int WIDTH = 640;
  private static final int HEIGHT = 480;

  @TempDir Path folder;

  private final FfmpegCameras cameras = new FfmpegCameras();

  private static List<BufferedImage> turningTag(int frames) {
    return IntStream.range(0, frames)
        .mapToObj(frame -> TagPictures.of(TAG, WIDTH, HEIGHT, frame * 7))
        .toList();
  }

  private Path clip(String name, int frames) {
    return ClipMaker.write(folder.resolve(name), turningTag(frames));
  }

  @ParameterizedTest
  @ValueSource(strings = {"tag.avi", "tag.mp4", "an odd, [name]; 100% of 'tag': a=b.avi"})
  void aTagIsReadOnEveryFrameOfAClip(String name) throws IOException {
    Path file = clip(name, 12);
    try (FrameSource source = cameras.open(Camera.ofClip(file))) {
      for (int frame = 0; frame < 12; frame++) {
        GreyImage grey = source.next().orElseThrow().grey();
        assertThat(grey.width()).isEqualTo(WIDTH);
        assertThat(grey.height()).isEqualTo(HEIGHT);
        assertThat(TagPictures.read(grey)).as("frame " + frame).contains(TAG.digits());
      }
      assertThat(source.next()).isEmpty();
      assertThat(source.next()).isEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"tag.avi", "an odd, [name]; 100% of 'tag': a=b\\c.avi"})
  void anEndlessClipBeginsAgain(String name) throws IOException {
    Path file = clip(name, 5);
    try (FrameSource source = cameras.open(FfmpegCameras.endlessClip(file))) {
      for (int frame = 0; frame < 17; frame++) {
        assertThat(TagPictures.read(source.next().orElseThrow().grey())).contains(TAG.digits());
      }
    }
  }

  @Test
  void aSeriesOfPicturesPlaysAsAClip() throws IOException {
    List<BufferedImage> pictures = turningTag(4);
    for (int frame = 0; frame < pictures.size(); frame++) {
      ImageIO.write(pictures.get(frame), "png", folder.resolve("tag" + frame + ".png").toFile());
    }
    Camera series = new Camera("file:" + folder.resolve("tag%d.png"), "series");
    try (FrameSource source = cameras.open(series)) {
      for (int frame = 0; frame < 4; frame++) {
        assertThat(TagPictures.read(source.next().orElseThrow().grey())).contains(TAG.digits());
      }
      assertThat(source.next()).isEmpty();
    }
  }

  @Test
  void theTestPictureMovesInColourAndItsGreyValuesAreItsLuminance() throws IOException {
    try (FrameSource source = cameras.open(FfmpegCameras.testPicture(322, 240))) {
      CameraFrame first = source.next().orElseThrow();
      CameraFrame second = source.next().orElseThrow();
      assertThat(first.bgra()).hasSize(322 * 240 * 4).isNotEqualTo(second.bgra());
      byte[] bgra = first.bgra();
      int coloured = 0;
      for (int pixel = 0; pixel < 322 * 240; pixel++) {
        int blue = bgra[4 * pixel] & 0xFF;
        int green = bgra[4 * pixel + 1] & 0xFF;
        int red = bgra[4 * pixel + 2] & 0xFF;
        coloured += Math.abs(blue - red) > 100 ? 1 : 0;
        // ITU-R BT.601-7, 2.5.1.
        double luminance = 0.299 * red + 0.587 * green + 0.114 * blue;
        assertThat((double) first.grey().at(pixel % 322, pixel / 322))
            .isBetween(luminance - 1.5, luminance + 1.5);
        assertThat(bgra[4 * pixel + 3]).isEqualTo((byte) 0xFF);
      }
      assertThat(coloured).isGreaterThan(322 * 240 / 10);
    }
  }

  @Test
  void aFrameStaysValidUntilTheNextButOne() throws IOException {
    List<BufferedImage> shades = new ArrayList<>();
    for (int shade = 20; shade < 240; shade += 30) {
      BufferedImage picture = new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB);
      Graphics2D graphics = picture.createGraphics();
      graphics.setColor(new Color(shade, shade, shade));
      graphics.fillRect(0, 0, 64, 48);
      graphics.dispose();
      shades.add(picture);
    }
    Path file = ClipMaker.write(folder.resolve("shades.avi"), shades);
    try (FrameSource source = cameras.open(Camera.ofClip(file))) {
      CameraFrame first = source.next().orElseThrow();
      byte[] copy = first.grey().pixels().clone();
      assertThat(copy[1000] & 0xFF).isBetween(17, 23);
      CameraFrame second = source.next().orElseThrow();
      assertThat(first.grey().pixels()).isEqualTo(copy).isNotEqualTo(second.grey().pixels());
      CameraFrame third = source.next().orElseThrow();
      assertThat(third.grey().pixels()).isSameAs(first.grey().pixels());
    }
  }

  @Test
  void aTruncatedClipEndsEarlyOrIsRefusedWithASentence() throws IOException {
    byte[] jpegs = Files.readAllBytes(clip("whole.avi", 12));
    Path cut = folder.resolve("cut.avi");
    Files.write(cut, Arrays.copyOf(jpegs, jpegs.length / 2));
    int frames = 0;
    try (FrameSource source = cameras.open(Camera.ofClip(cut))) {
      Optional<CameraFrame> frame = source.next();
      while (frame.isPresent()) {
        frames++;
        frame = source.next();
      }
    }
    assertThat(frames).isBetween(1, 11);

    byte[] film = Files.readAllBytes(clip("whole.mp4", 12));
    Path headless = folder.resolve("cut.mp4");
    Files.write(headless, Arrays.copyOf(film, film.length / 2));
    assertThatThrownBy(() -> cameras.open(Camera.ofClip(headless)))
        .isInstanceOf(IOException.class)
        .hasMessage(
            "\"cut.mp4\" cannot be opened as a clip. The file is damaged or not a video. Record it"
                + " again, or choose another.");
  }

  /** A grabber of which so many pictures in a row come broken after the first one. */
  private static FFmpegFrameGrabber broken(Path file, int pictures) {
    return new FFmpegFrameGrabber(file.toFile()) {
      private int asked;

      @Override
      public Frame grabImage() throws Exception {
        asked++;
        if (asked > 1 && asked <= pictures + 1) {
          throw new Exception("avcodec_receive_frame() error -1094995529");
        }
        return super.grabImage();
      }
    };
  }

  @Test
  void brokenPicturesArePassedOverUntilThereIsNothingElse() throws IOException {
    Path file = clip("tag.avi", 4);
    CameraInput input = CameraInput.of(Camera.ofClip(file));
    FFmpegFrameGrabber loose = broken(file, FfmpegSource.MOST_BROKEN - 1);
    loose.setPixelFormat(avutil.AV_PIX_FMT_BGRA);
    loose.start();
    try (FfmpegSource source = new FfmpegSource(input, loose)) {
      for (int frame = 0; frame < 4; frame++) {
        assertThat(TagPictures.read(source.next().orElseThrow().grey())).contains(TAG.digits());
      }
      assertThat(source.next()).isEmpty();
    }
    FFmpegFrameGrabber torn = broken(file, FfmpegSource.MOST_BROKEN);
    torn.setPixelFormat(avutil.AV_PIX_FMT_BGRA);
    torn.start();
    try (FfmpegSource source = new FfmpegSource(input, torn)) {
      assertThat(source.next()).isPresent();
      assertThatThrownBy(source::next)
          .isInstanceOf(IOException.class)
          .hasMessage("\"tag.avi\" is damaged. Record it again, or choose another.");
    }
  }

  @Test
  void aClipThatIsNotThereIsRefusedWithASentence() {
    Camera missing = Camera.ofClip(folder.resolve("none.mp4"));
    assertThatThrownBy(() -> cameras.open(missing))
        .isInstanceOf(IOException.class)
        .hasMessage(
            "\"none.mp4\" cannot be opened as a clip. The file is not there. Check its name.");
  }

  @Test
  void aCameraThatIsNotThereIsRefusedWithASentence() {
    Camera missing = new Camera("v4l2:" + folder.resolve("video0"), "Bench camera");
    assertThatThrownBy(() -> cameras.open(missing))
        .isInstanceOf(IOException.class)
        .hasMessage("Camera \"Bench camera\" is not there. Plug it in, or choose another camera.");
  }

  @Test
  void aDeviceThatIsNoCameraIsRefusedWithASentence() {
    Camera noCamera = new Camera("v4l2:/dev/null", "Bench camera");
    assertThatThrownBy(() -> cameras.open(noCamera))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("Camera \"Bench camera\" cannot be opened. Close other programs");
  }

  @Test
  void withoutTheLibraryThereIsNoCameraAndASentenceSaysSo() {
    Runnable missing =
        () -> {
          throw new UnsatisfiedLinkError("libpulse.so.0: cannot open shared object file");
        };
    Camera listed = new Camera("v4l2:/dev/video0", "Bench camera");
    FfmpegCameras none = new FfmpegCameras(() -> List.of(listed), missing);
    assertThat(none.list()).isEmpty();
    assertThatThrownBy(() -> none.open(listed))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("Cameras cannot be used")
        .hasMessageContaining("libpulse0");
  }

  @Test
  void theListOfThisMachineIsReadWithoutAnError() {
    assertThat(cameras.list()).allMatch(camera -> camera.id().contains(":"));
  }
}
