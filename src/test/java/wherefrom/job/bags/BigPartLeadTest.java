package wherefrom.job.bags;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.BenchJob;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.PartOut;
import wherefrom.job.takeapart.NextOut;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/** Taking apart leads through big parts and tagged parts in one order. */
class BigPartLeadTest {

  private static OpenJob whole(String layout) {
    OpenJob job = BenchJob.whole(ReadyLayouts.find(layout).orElseThrow(), PartKind.all());
    new BigParts(job).nameUsual();
    return job;
  }

  private static Optional<PartRecord> part(OpenJob job) {
    return new NextOut(job.state(), OutOrder.CYLINDER, Set.of()).find();
  }

  private static BigPartOrder order(OpenJob job) {
    return new BigPartOrder(job.state(), BagBook.of(job.state()));
  }

  private static Optional<BigPartRecord> lead(OpenJob job, Set<Integer> passed) {
    Optional<Place> next = part(job).map(record -> record.part().home());
    return order(job).findLead(next, passed);
  }

  /** No question is asked, nothing comes out from under what is still on, and all of it is off. */
  @ParameterizedTest
  @ValueSource(strings = {"v8-odd-even", "inline-6", "inline-4"})
  void whatIsProposedComesOffWithoutAQuestionAndNothingComesFromUnderAnother(String layout) {
    OpenJob job = whole(layout);
    List<String> said = new ArrayList<>();
    while (lead(job, Set.of()).isPresent() || part(job).isPresent()) {
      Optional<BigPartRecord> big = lead(job, Set.of());
      if (big.isPresent()) {
        assertThat(new BigParts(job).off(big.get().number(), ""))
            .isInstanceOf(BagOutcome.Logged.class);
        said.add(big.get().words());
      } else {
        PartRecord next = part(job).orElseThrow();
        assertThat(order(job).over(next.part().home())).as(next.part().words()).isEmpty();
        job.record(new PartOut(next.part().item()));
        said.add(next.part().kind().word());
      }
    }
    assertThat(BagBook.of(job.state()).bigParts()).noneMatch(BigPartRecord::isOn);
    assertThat(said.indexOf("rocker")).isGreaterThan(said.indexOf("distributor"));
    assertThat(said.indexOf("oil pan")).isBetween(0, said.indexOf("rod cap"));
  }

  @Test
  void whatIsPassedComesNoMoreAndStopsNobody() {
    OpenJob job = whole("v8-odd-even");
    Set<Integer> passed = new java.util.HashSet<>();
    for (Optional<BigPartRecord> next = lead(job, passed);
        next.isPresent();
        next = lead(job, passed)) {
      assertThat(passed.add(next.get().number())).as(next.get().words()).isTrue();
    }
    assertThat(passed).hasSizeGreaterThan(8);
    PartRecord rocker = part(job).orElseThrow();
    assertThat(order(job).over(rocker.part().home())).extracting(BigPartRecord::words).hasSize(1);
  }

  @Test
  void aPushrodGoesInAfterItsHead() {
    OpenJob job = whole("v8-odd-even");
    BigParts parts = new BigParts(job);
    parts.off(10, "for the test");
    Place mine = Place.find("pushrod@1EX").orElseThrow();
    assertThat(order(job).firstOn(mine))
        .extracting(BigPartRecord::words)
        .containsExactly("left head");
    assertThat(order(job).firstOn(Place.find("pushrod@2EX").orElseThrow())).isEmpty();
    parts.on(10, "for the test");
    assertThat(order(job).firstOn(mine)).isEmpty();
  }
}
