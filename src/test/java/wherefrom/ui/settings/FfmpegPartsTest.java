package wherefrom.ui.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.bytedeco.ffmpeg.global.avutil;
import org.junit.jupiter.api.Test;

/** What FFmpeg's libraries say of themselves is what we say of them. */
class FfmpegPartsTest {
  private static final String OURS = "/wherefrom/licenses/FFMPEG.txt";

  /** What the build switches on; not how it treats its own parts. */
  private static final Pattern SWITCH =
      Pattern.compile(
          "--enable-(?!shared|version3|runtime-cpudetect|pthreads|hwaccel)([a-z0-9-]+)");

  private static String ours() throws IOException {
    try (InputStream in =
        Objects.requireNonNull(FfmpegPartsTest.class.getResourceAsStream(OURS), OURS)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void itIsUnderTheLesserLicense() {
    assertThat(avutil.avutil_license().getString()).isEqualTo("LGPL version 3 or later");
    assertThat(avutil.avutil_configuration().getString())
        .doesNotContain("--enable-gpl", "--enable-nonfree");
  }

  @Test
  void everyLibraryThatIsBuiltIntoItIsNamed() throws IOException {
    List<String> parts =
        SWITCH
            .matcher(avutil.avutil_configuration().getString())
            .results()
            .map((MatchResult found) -> found.group(1).replace("libopencore-amrwb", "-amrwb"))
            .toList();
    assertThat(parts).hasSizeGreaterThan(15).contains("openssl", "libvpx");
    assertThat(ours().split("[\\s,.]+")).containsAll(parts);
  }
}
