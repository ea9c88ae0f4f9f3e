package wherefrom.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Reading;

class PipelineReaderTest {
  @Test
  void anEmptyPictureGivesNothing() {
    GreyImage grey = new GreyImage(640, 480, new byte[640 * 480]);
    assertThat(new PipelineReader().read(grey, List.of())).isEqualTo(Reading.NOTHING);
  }

  @Test
  void aPictureOfOnePixelGivesNothing() {
    GreyImage grey = new GreyImage(1, 1, new byte[1]);
    assertThat(new PipelineReader().read(grey, List.of())).isEqualTo(Reading.NOTHING);
  }
}
