package wherefrom.ui.home;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.SentToShop;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.shelf.JobDay;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.parts.Place;
import wherefrom.rules.consequence.ShopWork;
import wherefrom.ui.sample.SampleJob;

/** What a job's first screen says. */
class JobHomeModelTest {

  private static JobHomeModel model(SampleJob sample) {
    return new JobHomeModel(sample.job, OutOrder.CYLINDER, false);
  }

  private static List<String> days(JobHomeModel model) {
    return List.of(JobDay.values()).stream()
        .map(day -> DayWords.open(model.standing(), day))
        .toList();
  }

  @Test
  void theTagsAreToBePrintedFirst() {
    JobHomeModel model = model(SampleJob.whole());
    assertThat(model.deed().words()).isEqualTo("Print the tags first");
    assertThat(model.deed().more()).isEqualTo("74 tags, before the first bolt");
    assertThat(days(model)).containsExactly("74 to print", "74 to go", "later", "later", "later");
    assertThat(model.counts()).isEmpty();
    assertThat(model.here()).isEmpty();
  }

  @Test
  void takingApartGoesOnWhereItWasLeft() {
    SampleJob sample = SampleJob.whole();
    sample.job.record(new PartOut(sample.part("rocker@3EX").item()));
    JobHomeModel model = model(sample);
    assertThat(model.deed().words()).isEqualTo("Go on: 3 EX pushrod");
    assertThat(model.here()).containsExactly(Place.find("pushrod@3EX").orElseThrow());
    assertThat(model.aside(SampleJob.CLOCK)).isEqualTo("1 of 74 out");
    Clock later = Clock.offset(SampleJob.CLOCK, Duration.ofDays(90));
    assertThat(model.aside(later)).isEqualTo("last work 90 days ago");
  }

  @Test
  void aStopThatStandsComesFirst() {
    SampleJob sample = SampleJob.apart();
    PutTogether together = new PutTogether(sample.job);
    together.scan(sample.read(sample.tag("pushrod@3EX")));
    together.scan(sample.read(sample.card("5EX")));
    JobHomeModel model = model(sample);
    assertThat(model.deed().isStop()).isTrue();
    assertThat(model.deed().words()).isEqualTo("A stop is waiting");
    assertThat(model.deed().more()).endsWith(": 3 EX pushrod, at 5 EX");
    assertThat(model.counts())
        .as("the stopped part is not counted a second time as on the bench")
        .extracting(count -> count.parts() + " " + count.words())
        .containsExactly("1 stopped", "73 bench");
    assertThat(new JobHomeModel(sample.job, OutOrder.CYLINDER, true).deed().more())
        .as("in few words it still says which, and where")
        .isEqualTo("3\u00a0EX\u00a0pushrod, at\u00a05\u00a0EX");
  }

  @Test
  void whatIsStillInTheEngineIsCountedLast() {
    SampleJob sample = SampleJob.whole();
    sample.job.record(new PartOut(1));
    sample.job.record(new PartOut(2));
    sample.job.record(new OffForWashing(1, 2));
    assertThat(model(sample).counts())
        .extracting(count -> count.parts() + " " + count.words())
        .containsExactly("1 bench", "1 washing", "72 in engine");
  }

  @Test
  void puttingTogetherNamesTheNextPartAndWhereAllAre() {
    SampleJob sample = SampleJob.apart();
    sample.job.record(new OffForWashing(1, 2));
    sample.job.record(new SentToShop(1, List.of(2, 3), "measure runout", ShopWork.OTHER));
    JobHomeModel model = model(sample);
    assertThat(model.deed().words()).isEqualTo("Go on: main 1, upper shell");
    assertThat(new JobHomeModel(sample.job, OutOrder.CYLINDER, true).deed().words())
        .isEqualTo("Go on: main 1, upper");
    assertThat(model.counts())
        .extracting(count -> count.parts() + " " + count.words())
        .containsExactly("71 bench", "1 washing", "2 machine shop");
    assertThat(days(model).subList(0, 4))
        .containsExactly("74 to print", "all out", "71 to look at", "74 to fit");
  }
}
