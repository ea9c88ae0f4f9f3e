package wherefrom.ui.jobs;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
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
  private static final Clock LATER = Clock.offset(SampleJob.CLOCK, Duration.ofDays(140));

  @Test
  void aJobSaysWhenItWasLeftWhatWasDoneLastAndWhatComesNext() {
    PaperShelf shelf = new PaperShelf().put("launch", SampleJob.apart().job);
    List<JobsModel.Line> lines = new JobsModel(LATER, NO_COPIES).lines(shelf.list());
    assertThat(lines).hasSize(1);
    assertThat(lines.get(0).name()).isEqualTo("Launch V8");
    assertThat(lines.get(0).sofar()).isEqualTo("0 of 74 fitted");
    assertThat(lines.get(0).when()).isEqualTo("140 days ago");
    assertThat(lines.get(0).lines().get(0)).contains("4 May 2026, 140 days ago");
    assertThat(lines.get(0).lines().get(1)).isEqualTo("Put together. To fit: 74.");
  }

  @Test
  void aJobThatHasNotBegunSaysWhatIsToBePrinted() {
    PaperShelf shelf = new PaperShelf().put("launch", SampleJob.whole().job);
    assertThat(new JobsModel(SampleJob.CLOCK, NO_COPIES).lines(shelf.list()).get(0).sofar())
        .isEqualTo("74 tags to print");
  }

  @Test
  void aDamagedJobSaysWhatIsWrong() {
    PaperShelf shelf = new PaperShelf().putDamaged("spoilt", "Damaged in line 12.");
    JobsModel.Line line = new JobsModel(SampleJob.CLOCK, NO_COPIES).lines(shelf.list()).get(0);
    assertThat(line.lines()).containsExactly("Damaged in line 12.");
    assertThat(line.sofar()).isEqualTo("Damaged in line 12.");
    assertThat(line.standing()).isEmpty();
  }

  @Test
  void aTagFindsItsJob() {
    PaperShelf shelf =
        new PaperShelf()
            .putDamaged("spoilt", "Damaged in line 12.")
            .put("launch", SampleJob.apart().job);
    List<JobsModel.Line> lines = new JobsModel(LATER, NO_COPIES).lines(shelf.list());
    assertThat(JobsModel.find(lines, SampleJob.ENGINE)).contains(Path.of("launch"));
    assertThat(JobsModel.find(lines, SampleJob.OTHER_ENGINE)).isEmpty();
  }
}
