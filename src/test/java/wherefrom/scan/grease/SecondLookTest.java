package wherefrom.scan.grease;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.job.reader.Sighting;
import wherefrom.parts.TagCode;
import wherefrom.scan.PipelineReader;
import wherefrom.scan.StageProbe;

/** Frames that a first look does not read and a second one does. */
class SecondLookTest {
  private static final List<TagCode> ISSUED = GreaseFrames.issued(1_234_567);

  @ParameterizedTest
  @CsvSource({"THERMAL, 7, 28", "SOAKED, 8, 28", "WRINKLED, 8, 21"})
  void whatAFirstLookDoesNotReadASecondOneDoes(Family family, int grade, int seed) {
    TagCode code = GreaseFrames.pick(ISSUED, GreaseFrames.seed(family, grade, seed, 360));
    GreaseFrame frame = GreaseFrames.frame(family, grade, seed, 360, code);
    assertThat(StageProbe.of(frame.image(), ISSUED, frame.text(), frame.corners()))
        .isNotEqualTo(StageProbe.Stage.READ);
    assertThat(new PipelineReader().read(frame.image(), ISSUED).sightings())
        .extracting(Sighting::text)
        .containsExactly(frame.text());
  }
}
