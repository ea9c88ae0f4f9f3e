package wherefrom.ui.home;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.ui.sample.SampleJob;

/** What a person who comes back after months is told. */
class JobHomeModelTest {
  private static final Clock LATER = Clock.offset(SampleJob.CLOCK, Duration.ofDays(90));

  private static String said(List<JobHomeModel.Line> lines, String heading) {
    return lines.stream()
        .filter(line -> line.heading().startsWith(heading))
        .findFirst()
        .orElseThrow()
        .words();
  }

  @Test
  void aStopThatStandsComesFirst() {
    SampleJob sample = SampleJob.apart();
    PutTogether together = new PutTogether(sample.job, SampleJob.NAMES);
    together.scan(sample.tag("pushrod@3EX"));
    together.scan(sample.card("5EX"));
    List<JobHomeModel.Line> lines = JobHomeModel.lines(sample.job, LATER);
    assertThat(lines.get(0).heading()).isEqualTo("Do next");
    assertThat(lines.get(0).words()).contains("solve it first", "cylinder 3, exhaust");
    assertThat(lines.get(1).heading()).contains("4 May 2026, 90 days ago");
  }

  @Test
  void whatIsAwayIsNamedThreeTimesAndThenCounted() {
    SampleJob sample = SampleJob.apart();
    for (int item = 1; item <= 5; item++) {
      sample.job.record(new OffForWashing(item, 2));
    }
    String waiting = said(JobHomeModel.lines(sample.job, LATER), "Waiting");
    assertThat(waiting).contains("basket 2").endsWith("and 2 more: see the bench map.");
  }
}
