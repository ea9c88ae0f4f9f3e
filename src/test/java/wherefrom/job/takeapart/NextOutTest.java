package wherefrom.job.takeapart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.PartOut;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.sample.SampleJob;

/** The part that is proposed next follows the person. */
class NextOutTest {
  private final SampleJob sample = SampleJob.whole();

  private static List<String> run(SampleJob sample, OutOrder order, int many) {
    List<String> keys = new ArrayList<>();
    for (int at = 0; at < many; at++) {
      PartRecord next = new NextOut(sample.job.state(), order, Set.of()).find().orElseThrow();
      keys.add(next.part().home().key());
      sample.job.record(new PartOut(next.part().item()));
    }
    return keys;
  }

  private void out(String placeKey) {
    sample.job.record(new PartOut(sample.part(placeKey).item()));
  }

  @Test
  void cylinderByCylinderFinishesTheCylinderThenGoesOnByNumber() {
    out("rocker@3EX");
    assertThat(run(sample, OutOrder.CYLINDER, 5))
        .containsExactly("pushrod@3EX", "rocker@3IN", "pushrod@3IN", "rocker@4IN", "pushrod@4IN");
  }

  @Test
  void bankByBankStaysOnTheBankOfTheCylinder() {
    out("rocker@3EX");
    assertThat(run(sample, OutOrder.BANK, 5))
        .containsExactly("pushrod@3EX", "rocker@3IN", "pushrod@3IN", "rocker@5IN", "pushrod@5IN");
  }

  @Test
  void allOfOneKindBeginsWithTheRockersAndTakesThemAll() {
    assertThat(run(sample, OutOrder.KIND, 17))
        .startsWith("rocker@1IN", "rocker@1EX", "rocker@3IN")
        .containsSequence("rocker@7EX", "rocker@2IN", "rocker@2EX", "rocker@4IN")
        .endsWith("rocker@8EX", "pushrod@8EX")
        .filteredOn(key -> key.startsWith("rocker"))
        .hasSize(16);
  }

  @Test
  void whatIsLeftForLaterComesWhenNothingElseIsLeft() {
    Set<Integer> later = Set.of(sample.part("rocker@1IN").item());
    assertThat(next(later)).isEqualTo("rocker@1EX");
    for (Place place : sample.job.state().places()) {
      if (!place.key().endsWith("@1IN")) {
        out(place.key());
      }
    }
    assertThat(next(later)).isEqualTo("rocker@1IN");
  }

  private String next(Set<Integer> later) {
    return new NextOut(sample.job.state(), OutOrder.CYLINDER, later)
        .find()
        .orElseThrow()
        .part()
        .home()
        .key();
  }

  @Test
  void nothingIsProposedWhileAnotherPartHoldsIt() {
    SampleJob all = SampleJob.whole("v8-odd-even", EnumSet.allOf(PartKind.class));
    int places = all.job.state().places().size();
    for (OutOrder order : OutOrder.values()) {
      SampleJob fresh = SampleJob.whole("v8-odd-even", EnumSet.allOf(PartKind.class));
      for (int at = 0; at < places; at++) {
        Place next =
            new NextOut(fresh.job.state(), order, Set.of()).find().orElseThrow().part().home();
        assertThat(new OffFirst(fresh.job.state()).over(next)).as(next.key()).isEmpty();
        fresh.job.record(new PartOut(fresh.part(next.key()).item()));
      }
      assertThat(new NextOut(fresh.job.state(), order, Set.of()).find()).isEmpty();
    }
  }

  @Test
  void theRockerIsOverItsPushrodAndTheCapOverItsShells() {
    SampleJob all = SampleJob.whole("v8-odd-even", EnumSet.allOf(PartKind.class));
    OffFirst off = new OffFirst(all.job.state());
    assertThat(keys(off, "pushrod@3EX")).containsExactly("rocker@3EX");
    assertThat(keys(off, "lifter@3EX")).containsExactly("rocker@3EX", "pushrod@3EX");
    assertThat(keys(off, "rod-shell@R4U")).containsExactly("rod-cap@R4L");
    assertThat(keys(off, "main-shell@M2L")).containsExactly("main-cap@M2L");
    assertThat(keys(off, "piston@B4")).containsExactly("rod-cap@R4L");
    assertThat(keys(off, "rocker@3EX")).isEmpty();
    all.job.record(new PartOut(all.part("rocker@3EX").item()));
    assertThat(keys(off, "lifter@3EX")).containsExactly("pushrod@3EX");
  }

  private static List<String> keys(OffFirst off, String placeKey) {
    return off.over(Place.find(placeKey).orElseThrow()).stream()
        .map(part -> part.part().home().key())
        .toList();
  }
}
