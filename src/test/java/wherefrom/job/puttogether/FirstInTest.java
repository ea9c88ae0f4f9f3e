package wherefrom.job.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartOut;
import wherefrom.job.handling.Handling;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.Verdict;
import wherefrom.ui.sample.SampleJob;

class FirstInTest {
  private final SampleJob all = SampleJob.whole("v8-odd-even", EnumSet.allOf(PartKind.class));

  FirstInTest() {
    all.job.state().parts().forEach(part -> all.job.record(new PartOut(part.part().item())));
  }

  private static Place at(String key) {
    return Place.find(key).orElseThrow();
  }

  private void fit(String key) {
    all.job.record(new PartFitted(all.part(key).item(), at(key)));
  }

  private List<String> under(String key) {
    return new FirstIn(all.job.state()).under(at(key)).stream().map(Place::key).toList();
  }

  private String notice(String key) {
    return new FirstIn(all.job.state()).notice(at(key)).orElse("");
  }

  @Test
  void theInnermostIsNamedFirstAndWhatIsInOrLeftEmptyIsNotNamed() {
    assertThat(under("rocker@3EX"))
        .containsExactly(
            "valve@3EX", "spring@3EX", "retainer@3EX", "keepers@3EX", "lifter@3EX", "pushrod@3EX");
    assertThat(under("lifter@3EX")).isEmpty();
    fit("lifter@3EX");
    assertThat(notice("pushrod@3EX")).isEmpty();
    assertThat(notice("pushrod@4EX")).isEqualTo("Not in yet: lifter.");
    new ToFit(all.job).leave(at("lifter@4EX"), "a plug is in");
    assertThat(notice("pushrod@4EX")).isEmpty();
  }

  /** Nothing goes in under a cap that is fitted: it is no part to offer. */
  @Test
  void whatLiesUnderAFittedCapIsHeld() {
    ToFit missing = new ToFit(all.job);
    assertThat(missing.findHeld(at("rod-shell@R4L"))).isEmpty();
    fit("rod-cap@R4L");
    assertThat(missing.findHeld(at("rod-shell@R4L")).orElseThrow().why().word())
        .isEqualTo("not cleared");
    assertThat(missing.findFree(List.of(at("rod-shell@R4L"), at("piston@B4")))).isEmpty();
    assertThat(missing.findHeld(at("rod-shell@R5L"))).isEmpty();
  }

  /** The cap was off for its shell: it is named once both shells are in, and no more when it is. */
  @Test
  void aCapIsDueOnceAllUnderItIsIn() {
    fit("main-shell@M3U");
    assertThat(new FirstIn(all.job.state()).findCapDue(at("main-shell@M3U"))).isEmpty();
    fit("main-shell@M3L");
    assertThat(new FirstIn(all.job.state()).findCapDue(at("main-shell@M3L")))
        .contains(at("main-cap@M3L"));
    fit("main-cap@M3L");
    assertThat(new FirstIn(all.job.state()).findCapDue(at("main-shell@M3L"))).isEmpty();
    assertThat(new FirstIn(all.job.state()).findCapDue(at("lifter@3EX"))).isEmpty();
  }

  @Test
  void aCapWantsBothShellsItsRodAndPiston() {
    assertThat(notice("rod-cap@R4L"))
        .isEqualTo("Not in yet: piston, rod, upper shell, lower shell.");
    for (String key : List.of("piston@B4", "rod@R4U", "rod-shell@R4U", "rod-shell@R4L")) {
      assertThat(notice("rod-cap@R4L")).startsWith("Not in yet: ");
      fit(key);
    }
    assertThat(notice("rod-cap@R4L")).isEmpty();
  }

  @Test
  void nothingIsFittedUnderACapThatWasFittedUntilSomebodySaysItWasOff() {
    fit("rod-cap@R4L");
    Fitting fitting = new Fitting(all.job);
    for (String key : List.of("rod-shell@R4U", "rod-shell@R4L", "rod@R4U", "piston@B4")) {
      Verdict verdict = fitting.judge(all.part(key), at(key).spot(), false);
      assertThat(verdict.word()).as(key).isEqualTo("not cleared");
      assertThat(verdict.wayOut()).contains("Was the cap off?");
    }
    assertThat(fitting.judge(all.part("rod-shell@R5U"), at("rod-shell@R5U").spot(), false).word())
        .isEqualTo("right place");
    new Handling(all.job).tookOut(all.part("rod-cap@R4L").item(), "it was off");
    assertThat(fitting.judge(all.part("rod-shell@R4U"), at("rod-shell@R4U").spot(), false).word())
        .isEqualTo("right place");
  }

  @Test
  void theListNamesWhatLiesUnderAPartBeforeIt() {
    FirstIn first = new FirstIn(all.job.state());
    List<Place> order = new ToFit(all.job).places();
    for (Place place : order) {
      assertThat(order.indexOf(place))
          .as(place.key())
          .isGreaterThan(first.under(place).stream().mapToInt(order::indexOf).max().orElse(-1));
    }
  }
}
