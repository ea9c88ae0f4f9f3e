package wherefrom.scan.grease;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.reader.Sighting;
import wherefrom.parts.TagCode;
import wherefrom.scan.PipelineReader;

/** A small part of the bench, for every build. */
class GreaseRegressionTest {
  private static final List<TagCode> ISSUED = GreaseFrames.issued(2_222_222);
  private static final int[] GRADES = {3, 7};

  @Test
  void damagedTagsAreReadAndNothingElse() {
    int shown = 0;
    int read = 0;
    int wrong = 0;
    for (Family family : Family.FIRST) {
      int grade = GRADES[family.ordinal() % GRADES.length];
      TagCode code = GreaseFrames.pick(ISSUED, family.ordinal() * 31L + grade);
      GreaseFrame frame = GreaseFrames.frame(family, grade, 500, 720, code);
      List<String> texts =
          new PipelineReader()
              .read(frame.image(), ISSUED).sightings().stream().map(Sighting::text).toList();
      shown++;
      read += texts.contains(code.digits()) ? 1 : 0;
      wrong += (int) texts.stream().filter(text -> !text.equals(code.digits())).count();
    }
    assertThat(wrong).isZero();
    assertThat(read).isGreaterThanOrEqualTo(shown - 1);
  }
}
