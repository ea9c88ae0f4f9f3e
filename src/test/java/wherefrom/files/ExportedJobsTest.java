package wherefrom.files;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ExportedJobsTest {
  @ParameterizedTest
  @ValueSource(strings = {"v8.wherefrom.zip", "/a b/Old.ZIP", "six.wherefrom", "C:\\jobs\\v8.zip"})
  void aFileOfAJobIsKnownByItsEnding(String word) {
    assertThat(ExportedJobs.isNamed(word)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"places", "--help", "-", "zip", "tray.png", "--out=v8.zip"})
  void aCommandAndAnyOtherFileAreNot(String word) {
    assertThat(ExportedJobs.isNamed(word)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {ExportedJobs.OURS})
  void whatIsWrittenIsRead(String ending) {
    assertThat(ExportedJobs.ENDINGS).anyMatch(ending::endsWith);
  }
}
