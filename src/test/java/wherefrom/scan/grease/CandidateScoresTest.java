package wherefrom.scan.grease;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wherefrom.job.image.GreyImage;
import wherefrom.parts.TagCode;
import wherefrom.scan.find.Candidate;
import wherefrom.scan.find.CandidateSearch;
import wherefrom.scan.find.Threshold;
import wherefrom.scan.geometry.CameraModel;
import wherefrom.scan.geometry.LabelPattern;
import wherefrom.scan.geometry.PatternFit;
import wherefrom.scan.geometry.Pose;
import wherefrom.scan.grey.Pyramid;

/**
 * A candidate's score is that of its own pose, though one look serves all four turns of a place.
 */
class CandidateScoresTest {
  private static final List<TagCode> ISSUED = GreaseFrames.issued(1_234_567);
  private static final Threshold CUT = new Threshold(1, 14, 3);

  @ParameterizedTest
  @EnumSource(
      value = Family.class,
      names = {"ROD", "TILT"})
  void everyCandidateIsScoredAsItsPoseFits(Family family) {
    TagCode code = GreaseFrames.pick(ISSUED, GreaseFrames.seed(family, 4, 3, 720));
    GreyImage image = GreaseFrames.frame(family, 4, 3, 720, code).image();
    LabelPattern pattern = LabelPattern.printed();
    PatternFit fit = new PatternFit(pattern, CameraModel.of(image.width(), image.height()));
    Pyramid pyramid = Pyramid.of(image);
    List<Candidate> found = new CandidateSearch(pattern, fit).search(pyramid, CUT, 80);
    assertThat(found).hasSizeGreaterThan(4);
    assertThat(found).extracting(Candidate::pose).extracting(Pose::isBent).contains(true, false);
    assertThat(found)
        .allSatisfy(
            one ->
                assertThat(one.score())
                    .isCloseTo(fit.coarseScore(pyramid, one.pose()), within(1e-5)));
  }
}
