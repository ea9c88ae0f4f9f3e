package wherefrom.ui.camera;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.job.reader.LiveAnswer;
import wherefrom.job.reader.Sighting;
import wherefrom.job.reader.Unread;

/** What the person is asked for, from frame to frame. */
class HintsTest {
  private static final Sighting TAG = new Sighting("1", Sighting.Basis.ISSUED, List.of());
  private static final LiveAnswer BARE = new LiveAnswer.Nothing(Optional.empty());
  private static final LiveAnswer GLARE = new LiveAnswer.Nothing(Optional.of(Unread.Cause.GLARE));
  private static final LiveAnswer TWO = new LiveAnswer.Several(List.of(TAG, TAG));
  private static final LiveAnswer READ = new LiveAnswer.Read(TAG);

  private final Hints hints = new Hints();
  private final List<String> asked = new ArrayList<>();

  private void see(LiveAnswer answer, int frames) {
    for (int frame = 0; frame < frames; frame++) {
      hints.accept(answer).ifPresent(asked::add);
    }
  }

  @Test
  void aTagOnItsWayIntoThePictureIsNoTrouble() {
    see(GLARE, Hints.UNREAD_STAYS - 1);
    see(READ, 1);
    see(TWO, Hints.SEVERAL_STAY - 1);
    assertThat(asked).isEmpty();
  }

  @Test
  void whatStaysUnreadIsAskedAboutOnceAndTakenBackWhenItHasGone() {
    see(GLARE, 200);
    assertThat(asked).containsExactly(Unread.Cause.GLARE.hint());
    see(BARE, Hints.OVER - 1);
    assertThat(asked).hasSize(1);
    see(BARE, 100);
    assertThat(asked).containsExactly(Unread.Cause.GLARE.hint(), "");
    see(GLARE, Hints.UNREAD_STAYS);
    assertThat(asked).hasSize(3);
  }

  @Test
  void aDroppedFrameBetweenTwoTagsDoesNotAskAgain() {
    see(TWO, Hints.SEVERAL_STAY);
    see(BARE, Hints.OVER - 1);
    see(TWO, 50);
    assertThat(asked).containsExactly("2 tags are in view. Cover all but one.");
  }

  @Test
  void aReadingNeedsNoTakingBack() {
    see(TWO, Hints.SEVERAL_STAY);
    see(READ, 1);
    see(BARE, 100);
    assertThat(asked).hasSize(1);
  }
}
