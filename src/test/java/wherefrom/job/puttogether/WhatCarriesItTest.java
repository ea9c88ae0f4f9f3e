package wherefrom.job.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.RockerMount;
import wherefrom.job.JobPartNames;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigParts;
import wherefrom.job.entry.PartOut;
import wherefrom.job.handling.Handling;
import wherefrom.job.shop.MachineShop;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.Verdict;
import wherefrom.ui.sample.SampleJob;

/**
 * A part cannot be in its place while what carries it, or what it goes up through, is not there.
 */
class WhatCarriesItTest {
  private static SampleJob apart(String layout) {
    return apart(SampleJob.whole(layout, EnumSet.allOf(PartKind.class)));
  }

  private static SampleJob apart(SampleJob job) {
    List.copyOf(job.job.state().parts())
        .forEach(part -> job.job.record(new PartOut(part.part().item())));
    new BigParts(job.job).nameUsual();
    return job;
  }

  private static Layout onShaft(Layout stud) {
    return new Layout(
        stud.name(),
        stud.title(),
        stud.arrangement(),
        stud.vee(),
        stud.banks(),
        stud.leadingBank(),
        stud.firingOrder(),
        stud.mains(),
        stud.thrustMain(),
        stud.mainCaps(),
        stud.rodJournals(),
        stud.camBearings(),
        stud.lifters(),
        RockerMount.SHAFT);
  }

  private static int number(SampleJob job, String words) {
    return BagBook.of(job.job.state()).bigParts().stream()
        .filter(part -> part.words().equals(words))
        .findFirst()
        .orElseThrow()
        .number();
  }

  private static void off(SampleJob job, String words, Whereabouts to) {
    BigParts parts = new BigParts(job.job);
    parts.off(number(job, words), "for the test");
    if (to != Whereabouts.OUT) {
      parts.move(number(job, words), to, "");
    }
  }

  private static Verdict judge(SampleJob job, String key) {
    Place place = Place.find(key).orElseThrow();
    return new Fitting(job.job).judge(job.part(key), place.spot(), false);
  }

  private static List<String> lines(SampleJob job, String key) {
    return judge(job, key).words(new JobPartNames(job.job.state())).lines();
  }

  @Test
  void whatNeedsTheHeadOnIsStoppedWhileItIsOff() {
    SampleJob job = apart("v8-odd-even");
    off(job, "left head", Whereabouts.OUT);
    for (String kind : List.of("pushrod", "rocker", "pivot")) {
      Verdict verdict = judge(job, kind + "@3EX");
      assertThat(verdict.word()).as(kind).isEqualTo("not cleared");
      assertThat(lines(job, kind + "@3EX")).contains(kind + ": head is off");
      assertThat(judge(job, kind + "@4EX").word()).as("the other head").isEqualTo("right place");
    }
    for (String kind : List.of("spring", "valve", "retainer", "keepers", "lifter")) {
      assertThat(judge(job, kind + "@3EX").word()).as(kind).isEqualTo("right place");
    }
    new BigParts(job.job).on(number(job, "left head"), "for the test");
    assertThat(judge(job, "pushrod@3EX").word()).isEqualTo("right place");
  }

  @Test
  void nothingGoesIntoAHeadThatIsAway() {
    for (Whereabouts away : List.of(Whereabouts.WASHING, Whereabouts.AT_SHOP, Whereabouts.LOST)) {
      SampleJob job = apart("v8-odd-even");
      off(job, "left head", away);
      for (String kind : List.of("spring", "valve", "retainer", "keepers", "pushrod", "rocker")) {
        assertThat(lines(job, kind + "@3EX"))
            .as(kind)
            .contains(PartKind.valueOf(kind.toUpperCase(Locale.ROOT)).word() + ": head is away");
      }
      assertThat(judge(job, "lifter@3EX").word()).isEqualTo("right place");
    }
  }

  @Test
  void aRockerOnAShaftWantsItsShaftAtHand() {
    Layout shaft = ReadyLayouts.find("inline-4").orElseThrow();
    SampleJob job = apart(SampleJob.whole(onShaft(shaft), EnumSet.allOf(PartKind.class)));
    off(job, "rocker shaft", Whereabouts.OUT);
    assertThat(judge(job, "rocker@2EX").word()).as("put onto it").isEqualTo("right place");
    new BigParts(job.job).move(number(job, "rocker shaft"), Whereabouts.AT_SHOP, "");
    assertThat(lines(job, "rocker@2EX")).contains("rocker: shaft is away");
    assertThat(judge(job, "pushrod@2EX").word()).as("its head is on").isEqualTo("right place");
  }

  @Test
  void aShellIsStoppedWhileItsCapOrRodIsAway() {
    SampleJob job = apart("v8-odd-even");
    int cap = job.part("rod-cap@R5L").item();
    new MachineShop(job.job).send(1, List.of(cap, job.part("rod@R6U").item()), "resize");
    assertThat(lines(job, "rod-shell@R5L")).contains("rod shell: cap is away");
    assertThat(judge(job, "rod-shell@R5L").sentence()).contains("its cap is at the machine shop");
    assertThat(lines(job, "rod-shell@R6U")).contains("rod shell: rod is away");
    assertThat(judge(job, "rod-shell@R5U").word()).isEqualTo("right place");
    new Handling(job.job).offForWashing(job.part("main-cap@M2L").item(), 2);
    assertThat(judge(job, "main-shell@M2L").sentence())
        .contains("its cap is off for washing, basket 2");
  }

  @Test
  void theListPassesThemAndNamesThemAsHeld() {
    SampleJob job = apart("v8-odd-even");
    off(job, "left head", Whereabouts.OUT);
    assertThat(new ToFit(job.job).held())
        .hasSize(3 * 8)
        .allMatch(held -> held.place().spot().findCylinder().orElseThrow() % 2 == 1);
    assertThat(new ToFit(job.job).findHeld(Place.find("pushrod@4EX").orElseThrow())).isEmpty();
  }

  @Test
  void aJobThatKeepsNoHeadSaysNothing() {
    assertThat(judge(SampleJob.apart(), "pushrod@3EX").word()).isEqualTo("right place");
  }
}
