package wherefrom.scan.grease;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.LiveAnswer;
import wherefrom.job.reader.LiveReader;
import wherefrom.parts.TagCode;
import wherefrom.scan.PipelineReader;

/** What a person sees who holds tags before a camera. */
class LiveReadingTest {
  private static final List<TagCode> ISSUED = GreaseFrames.issued(7_654_321);

  @Test
  void aTagIsReadOnceAndThenStaysInView() {
    LiveReader live = new PipelineReader().live(ISSUED);
    List<LiveAnswer> answers = show(live, ISSUED.get(17), 6);
    List<LiveAnswer.Read> reads = reads(answers);
    assertThat(reads).hasSize(1);
    assertThat(reads.get(0).sighting().text()).isEqualTo(ISSUED.get(17).digits());
    assertThat(answers.get(5)).isInstanceOf(LiveAnswer.StillThere.class);
  }

  @Test
  void theSameTagIsReadAgainAfterItHasLeft() {
    LiveReader live = new PipelineReader().live(ISSUED);
    List<LiveAnswer> answers = new ArrayList<>(show(live, ISSUED.get(3), 4));
    for (int count = 0; count < 12; count++) {
      answers.add(live.accept(empty()));
    }
    assertThat(answers.get(answers.size() - 1)).isInstanceOf(LiveAnswer.Nothing.class);
    answers.addAll(show(live, ISSUED.get(3), 4));
    assertThat(reads(answers)).hasSize(2);
  }

  @Test
  void theNextTagIsReadAtOnce() {
    LiveReader live = new PipelineReader().live(ISSUED);
    List<LiveAnswer> answers = new ArrayList<>(show(live, ISSUED.get(3), 4));
    answers.addAll(show(live, ISSUED.get(40), 8));
    assertThat(reads(answers))
        .extracting(read -> read.sighting().text())
        .containsExactly(ISSUED.get(3).digits(), ISSUED.get(40).digits());
  }

  @Test
  void twoTagsInViewAreAskedAboutUntilOneIsCovered() {
    LiveReader live = new PipelineReader().live(ISSUED);
    GreyImage left = frame(ISSUED.get(3));
    GreyImage right = frame(ISSUED.get(40));
    List<LiveAnswer> both = new ArrayList<>();
    for (int count = 0; count < 12; count++) {
      both.add(live.accept(beside(left, right)));
    }
    LiveAnswer last = both.get(both.size() - 1);
    assertThat(last).isInstanceOf(LiveAnswer.Several.class);
    assertThat(((LiveAnswer.Several) last).sightings())
        .extracting(sighting -> sighting.text())
        .containsExactlyInAnyOrder(ISSUED.get(3).digits(), ISSUED.get(40).digits());
    List<LiveAnswer> one = new ArrayList<>();
    for (int count = 0; count < 12; count++) {
      one.add(live.accept(beside(left, empty())));
    }
    assertThat(one.get(one.size() - 1))
        .isInstanceOfSatisfying(
            LiveAnswer.StillThere.class,
            there -> assertThat(there.sighting().text()).isEqualTo(ISSUED.get(3).digits()));
  }

  private static GreyImage frame(TagCode code) {
    return GreaseFrames.scene(Family.OIL, 1, code.item(), 720, code).next(code.digits()).image();
  }

  private static GreyImage beside(GreyImage left, GreyImage right) {
    int width = left.width() + right.width();
    byte[] pixels = new byte[width * left.height()];
    for (int row = 0; row < left.height(); row++) {
      System.arraycopy(left.pixels(), row * left.width(), pixels, row * width, left.width());
      System.arraycopy(
          right.pixels(), row * right.width(), pixels, row * width + left.width(), right.width());
    }
    return new GreyImage(width, left.height(), pixels);
  }

  private static List<LiveAnswer> show(LiveReader live, TagCode code, int frames) {
    GreaseScene scene = GreaseFrames.scene(Family.OIL, 2, code.item(), 720, code);
    List<LiveAnswer> answers = new ArrayList<>();
    for (int count = 0; count < frames; count++) {
      answers.add(live.accept(scene.next(code.digits()).image()));
    }
    return answers;
  }

  private static List<LiveAnswer.Read> reads(List<LiveAnswer> answers) {
    return answers.stream()
        .filter(LiveAnswer.Read.class::isInstance)
        .map(LiveAnswer.Read.class::cast)
        .toList();
  }

  private static GreyImage empty() {
    byte[] grey = new byte[1280 * 720];
    Arrays.fill(grey, (byte) 90);
    return new GreyImage(1280, 720, grey);
  }
}
