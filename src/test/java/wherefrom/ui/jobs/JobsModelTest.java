package wherefrom.ui.jobs;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.ui.sample.PaperShelf;
import wherefrom.ui.sample.SampleJob;

/** What the list of jobs says. */
class JobsModelTest {
  private static final JobsModel.Copies NO_COPIES = (job, touched) -> Optional.empty();

  @Test
  void aJobSaysWhenItWasLeftWhatWasDoneLastAndWhatComesNext() {
    Clock later = Clock.offset(SampleJob.CLOCK, Duration.ofDays(140));
    PaperShelf shelf = new PaperShelf().put("launch", SampleJob.apart().job);
    List<JobsModel.Line> lines = new JobsModel(later, NO_COPIES).lines(shelf.list());
    assertThat(lines).hasSize(1);
    assertThat(lines.get(0).name()).isEqualTo("Launch V8");
    assertThat(lines.get(0).lines().get(0)).contains("4 May 2026, 140 days ago");
    assertThat(lines.get(0).lines().get(1)).isEqualTo("Put together. Still missing: 74.");
  }

  @Test
  void aDamagedJobSaysWhatIsWrong() {
    PaperShelf shelf = new PaperShelf().putDamaged("spoilt", "Damaged in line 12.");
    assertThat(new JobsModel(SampleJob.CLOCK, NO_COPIES).lines(shelf.list()).get(0).lines())
        .containsExactly("Damaged in line 12.");
  }
}
