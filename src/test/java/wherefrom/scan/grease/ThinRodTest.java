package wherefrom.scan.grease;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wherefrom.job.reader.Sighting;
import wherefrom.parts.TagCode;
import wherefrom.scan.PipelineReader;

/**
 * Labels wrapped over more than 130 degrees of a thin rod, of which 60 % of the modules are to be
 * seen. {@code mvn -Pbench test -Dtest=ThinRodTest} shows {@code -Drod.seeds=6} of each kind, from
 * {@code -Drod.first=6200} on.
 */
class ThinRodTest {
  private static final List<TagCode> ISSUED = GreaseFrames.issued(1_234_567);
  private static final double ENOUGH = 0.6;

  private final PipelineReader reader = new PipelineReader();
  private int enough;
  private int read;
  private int wrong;

  @Test
  void whatShowsSixtyPercentIsRead() {
    for (int turn : new int[] {0, 24, 36}) {
      show(150, turn, 6_001, 480);
    }
    assertThat(wrong).isZero();
    assertThat(enough).isEqualTo(3);
    assertThat(read).isEqualTo(3);
  }

  @Test
  void oneFinderPatternThatFacesTheCameraIsEnough() {
    show(150, 48, 6_002, 720);
    show(150, 48, 6_014, 720);
    assertThat(wrong).isZero();
    assertThat(enough).isEqualTo(2);
    assertThat(read).isEqualTo(2);
  }

  @Test
  void whatIsOutOfSightDoesNotPullAtWhatFacesTheCamera() {
    show(150, 48, 6_013, 720);
    assertThat(wrong).isZero();
    assertThat(enough).isEqualTo(1);
    assertThat(read).isEqualTo(1);
  }

  @Test
  void whereNoFinderPatternFacesTheCameraTheFrameAcrossTheRodIsEnough() {
    show(150, 0, 6_018, 720);
    show(160, 0, 6_003, 720);
    show(160, 0, 6_300, 720);
    assertThat(wrong).isZero();
    assertThat(enough).isEqualTo(3);
    assertThat(read).isEqualTo(3);
  }

  @Test
  @Tag("bench")
  void nearlyAllOfManyThatShowSixtyPercentAreRead() {
    int first = Integer.getInteger("rod.first", 6_200);
    for (int wrap : ThinRods.WRAPS) {
      for (int turn : ThinRods.TURNS) {
        for (int seed = first; seed < first + Integer.getInteger("rod.seeds", 6); seed++) {
          show(wrap, turn, seed, 720);
        }
        System.out.println(wrap + " degrees, turned " + turn + ": " + read + " of " + enough);
      }
    }
    assertThat(wrong).isZero();
    assertThat(read).isGreaterThanOrEqualTo(enough * 9 / 10);
  }

  private void show(int wrap, int turn, int seed, int height) {
    ThinRods.Wrapped wrapped = ThinRods.of(wrap, turn, seed, height, ISSUED);
    List<String> texts =
        reader.read(wrapped.frame().image(), ISSUED).sightings().stream()
            .map(Sighting::text)
            .toList();
    wrong += (int) texts.stream().filter(text -> !text.equals(wrapped.frame().text())).count();
    if (wrapped.shown() >= ENOUGH) {
      enough++;
      read += texts.contains(wrapped.frame().text()) ? 1 : 0;
    }
  }
}
