package wherefrom.scan.grease;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.Sighting;
import wherefrom.parts.TagCode;
import wherefrom.scan.PipelineReader;

/** One photograph of a whole tray. */
class GreaseTrayTest {
  private static final List<TagCode> ISSUED = GreaseFrames.issued(1_234_567);

  @Test
  void atLeastThirtyOneOfThirtyTwoTagsAreReadAndEachOnce() {
    List<TagCode> tray = ISSUED.subList(0, 32);
    Reading reading = new PipelineReader().read(GreaseTray.photograph(tray, 8, 32), ISSUED);
    Set<String> expected = tray.stream().map(TagCode::digits).collect(Collectors.toSet());
    List<String> texts = reading.sightings().stream().map(Sighting::text).toList();
    assertThat(texts).doesNotHaveDuplicates().hasSizeGreaterThanOrEqualTo(31);
    assertThat(expected).containsAll(texts);
  }
}
