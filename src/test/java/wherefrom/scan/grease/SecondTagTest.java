package wherefrom.scan.grease;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.job.reader.Sighting;
import wherefrom.parts.TagCode;
import wherefrom.scan.PipelineReader;

/** Pictures of two tags of which the quick search reads one. */
class SecondTagTest {
  private static final List<TagCode> ISSUED = GreaseFrames.issued(1_234_567);

  @ParameterizedTest
  @CsvSource({"17, 720", "24, 720", "53, 1080"})
  void theOtherTagIsReadToo(int seed, int height) {
    List<TagCode> parts = new ArrayList<>(ISSUED.subList(0, 96));
    Collections.shuffle(parts, new Random(seed));
    List<TagCode> two = parts.subList(0, 2);
    assertThat(
            new PipelineReader()
                .read(GreaseGroup.photograph(two, 2, height, seed), ISSUED)
                .sightings())
        .extracting(Sighting::text)
        .containsExactlyInAnyOrder(two.get(0).digits(), two.get(1).digits());
  }
}
