package wherefrom.job.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wherefrom.job.Benches;
import wherefrom.job.OpenJob;
import wherefrom.parts.Part;
import wherefrom.rules.Hold;
import wherefrom.rules.Verdict;

/** Why a part goes in against a stop is asked as the stop is. */
class OnPurposeTest {
  private final OpenJob job = Benches.apart();
  private final Fitting fitting = new Fitting(job);
  private final Part pushrod = Benches.part(job, "pushrod@3EX");

  @Test
  void aWrongPlaceIsAskedForWhatMakesItTheRightOne() {
    OnPurpose asked = OnPurpose.of(fitting.judge(pushrod, Benches.spot("5EX"), false));
    assertThat(asked.question()).isEqualTo("Why does it go here?");
    assertThat(asked.reasons().usual()).contains("measured better here", "matched pair");
  }

  @Test
  void aTurnedPartIsAskedForItsWayRound() {
    OnPurpose asked = OnPurpose.of(fitting.judge(pushrod, Benches.spot("3EX"), true));
    assertThat(asked.question()).isEqualTo("Why this way round?");
    assertThat(asked.reasons().usual()).contains("it ran this way").doesNotContain("matched pair");
  }

  /** At home in its place, nothing of another place explains it, before it is in or after. */
  @ParameterizedTest
  @EnumSource
  void whatIsNotClearedIsNotAskedForAnotherPlace(Hold hold) {
    Verdict.NotCleared held = new Verdict.NotCleared(pushrod, pushrod.home(), hold, "so", "");
    OnPurpose asked = OnPurpose.of(held);
    assertThat(asked.question()).isEqualTo("Why does it go in?");
    assertThat(asked.reasons().usual())
        .hasSizeGreaterThan(1)
        .doesNotContain("measured better here", "matched pair", "machined to suit");
    OnPurpose stays = OnPurpose.of(new Verdict.FittedBut(pushrod, pushrod.home(), held, true));
    assertThat(stays.question()).isEqualTo("Why does it stay?");
    assertThat(stays.reasons()).isEqualTo(asked.reasons());
  }

  @Test
  void whatIsAwayOrDoubtedHasReasonsOfItsOwn() {
    assertThat(reasons(Hold.FOUND_BAD)).isNotEqualTo(reasons(Hold.LOST));
    assertThat(reasons(Hold.CHECK_OPEN)).isNotEqualTo(reasons(Hold.FOUND_BAD));
  }

  private OnPurpose reasons(Hold hold) {
    return OnPurpose.of(new Verdict.NotCleared(pushrod, pushrod.home(), hold, "so", ""));
  }
}
