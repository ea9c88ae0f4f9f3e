package wherefrom.rules.debris;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Look;

class DebrisMapTest {
  private static final BearingLooks UNSEEN =
      new BearingLooks(
          List.of(), List.of("main 1, lower shell"), List.of("main 1, lower shell", "main 2"));

  private static BearingLooks seen(Look look, List<String> leftFirst, List<String> leftAll) {
    return new BearingLooks(
        List.of(new BearingLook("main 1, lower shell", look)), leftFirst, leftAll);
  }

  private static MainsQuestion asked(DebrisPlace place, DebrisLook look, BearingLooks bearings) {
    return MainsQuestion.of(List.of(new DebrisFind(place, look)), List.of(), bearings);
  }

  private static DebrisMap of(DebrisPlace place, DebrisLook look) {
    return DebrisMap.of(List.of(new DebrisFind(place, look)), List.of(), Set.of(), UNSEEN);
  }

  @Test
  void plasticInThePanPointsToTheCamGearAndOpensTheCheapestFirst() {
    DebrisMap map = of(DebrisPlace.PAN, DebrisLook.PLASTIC);
    assertThat(map.suspects().get(0).sentence()).contains("teeth of the cam gear");
    assertThat(map.openings())
        .containsExactly(
            Opening.FILTER,
            Opening.FRONT_COVER,
            Opening.PAN_AND_PICKUP,
            Opening.PUMP,
            Opening.FIRST_BEARINGS);
    assertThat(map.mains()).isEqualTo(ReachedMains.OPEN);
  }

  @Test
  void copperInTheFilterPointsToTheBearingsAndEndsAtAllOfThem() {
    DebrisMap map = of(DebrisPlace.FILTER_PLEATS, DebrisLook.COPPER);
    assertThat(map.openings()).containsExactly(Opening.FIRST_BEARINGS, Opening.ALL_BEARINGS);
  }

  @Test
  void theSameFlakesPastTheFilterAreWorse() {
    assertThat(of(DebrisPlace.MAGNETIC_PLUG, DebrisLook.MAGNETIC_FLAKES).openings())
        .doesNotContain(Opening.GALLERIES);
    assertThat(of(DebrisPlace.GALLERY, DebrisLook.MAGNETIC_FLAKES).openings())
        .contains(Opening.GALLERIES, Opening.ALL_BEARINGS);
  }

  @Test
  void onlyAStarvingPickupIsSuspectedOfSealant() {
    DebrisMap map = of(DebrisPlace.PICKUP_SCREEN, DebrisLook.SEALANT);
    assertThat(map.openings()).containsExactly(Opening.PAN_AND_PICKUP);
    assertThat(map.mains()).isEqualTo(ReachedMains.NOTHING_FOUND);
  }

  @Test
  void harmfulDebrisAtTheMainsAnswersTheQuestion() {
    assertThat(of(DebrisPlace.MAINS, DebrisLook.SILVER_GLITTER).mains())
        .isEqualTo(ReachedMains.YES);
  }

  @Test
  void theQuestionStaysOpenUntilTheBearingsWereLookedAt() {
    List<DebrisFind> finds = List.of(new DebrisFind(DebrisPlace.PAN, DebrisLook.PLASTIC));
    Set<Opening> most = EnumSet.complementOf(EnumSet.of(Opening.FIRST_BEARINGS));
    DebrisMap map = DebrisMap.of(finds, List.of(), most, UNSEEN);
    assertThat(map.mains()).isEqualTo(ReachedMains.OPEN);
    assertThat(map.openings()).containsExactly(Opening.FIRST_BEARINGS);
    assertThat(map.question().wanted()).containsExactly("main 1, lower shell");
  }

  // TM 5-3895-346-14: the lower main shells tell, one cap at a time with the crank in place.
  @Test
  void cleanLowerShellsAnswerNoAndTheAnswerNamesTheLook() {
    BearingLooks clean = seen(Look.PASS, List.of(), List.of("main 2"));
    MainsQuestion question = asked(DebrisPlace.PAN, DebrisLook.MAGNETIC_FLAKES, clean);
    assertThat(question.answer()).isEqualTo(ReachedMains.NO);
    assertThat(question.answeredBy()).containsExactly("main 1, lower shell: pass");
    assertThat(question.openedBy()).hasSize(1);
  }

  @Test
  void copperOrDebrisPastTheFilterWantsEveryBearing() {
    BearingLooks first = seen(Look.PASS, List.of(), List.of("main 2"));
    assertThat(asked(DebrisPlace.FILTER_PLEATS, DebrisLook.COPPER, first).wanted())
        .containsExactly("main 2");
    assertThat(asked(DebrisPlace.GALLERY, DebrisLook.PLASTIC, first).answer())
        .isEqualTo(ReachedMains.OPEN);
    BearingLooks all = seen(Look.PASS, List.of(), List.of());
    assertThat(asked(DebrisPlace.GALLERY, DebrisLook.PLASTIC, all).answer())
        .isEqualTo(ReachedMains.NO);
  }

  @Test
  void aFailedShellIsYesAndASuspectOneLeavesItOpen() {
    BearingLooks failed = seen(Look.FAIL, List.of(), List.of());
    assertThat(asked(DebrisPlace.PAN, DebrisLook.PLASTIC, failed).answer())
        .isEqualTo(ReachedMains.YES);
    MainsQuestion doubtful =
        asked(DebrisPlace.PAN, DebrisLook.PLASTIC, seen(Look.SUSPECT, List.of(), List.of()));
    assertThat(doubtful.answer()).isEqualTo(ReachedMains.OPEN);
    assertThat(doubtful.wanted())
        .containsExactly("main 1, lower shell: suspect, measure it or ask someone");
  }

  @Test
  void aFindingElsewhereAsksTheQuestionWithoutAnyDebrisSeen() {
    MainsQuestion question = MainsQuestion.of(List.of(), List.of("cam lobe failed"), UNSEEN);
    assertThat(question.answer()).isEqualTo(ReachedMains.OPEN);
    assertThat(question.openedBy()).containsExactly("cam lobe failed");
  }

  /** Common practice, no source: water in the oil ruins bearings, whatever let it in. */
  @Test
  void brownMilkIsHarmfulOpensAMainAndNamesEveryWayIn() {
    DebrisMap map = of(DebrisPlace.DIPSTICK, DebrisLook.BROWN_MILK);
    assertThat(map.mains()).isEqualTo(ReachedMains.OPEN);
    assertThat(map.suspects().get(0).sentence())
        .contains(
            "coolant or water in the oil",
            "head gasket",
            "intake gasket",
            "timing cover",
            "crack",
            "condensation");
    assertThat(map.openings())
        .containsExactly(
            Opening.DRAINED_OIL,
            Opening.PRESSURE_TEST,
            Opening.INTAKE_GASKET,
            Opening.HEAD_GASKET,
            Opening.FRONT_COVER,
            Opening.FIRST_BEARINGS);
  }

  @Test
  void aluminiumWithoutPlasticPointsToAPistonOrThePumpNotToTheCamGear() {
    DebrisMap map = of(DebrisPlace.PAN, DebrisLook.ALUMINIUM);
    assertThat(map.suspects().get(0).sentence()).contains("piston", "pump").doesNotContain("gear");
    assertThat(map.openings())
        .contains(Opening.BORES, Opening.PUMP)
        .doesNotContain(Opening.FRONT_COVER);
  }

  @Test
  void flakesThatSuspectTheChainOpenTheFrontCover() {
    DebrisMap map = of(DebrisPlace.MAGNETIC_PLUG, DebrisLook.MAGNETIC_FLAKES);
    assertThat(map.suspects().get(0).sentence()).contains("the chain");
    assertThat(map.openings())
        .containsExactly(
            Opening.LIFTERS,
            Opening.FRONT_COVER,
            Opening.PUMP,
            Opening.FIRST_BEARINGS,
            Opening.CAM);
  }

  @Test
  void whateverIsSuspectedIsOpened() {
    for (DebrisLook look : DebrisLook.values()) {
      for (Suspect suspect : Suspect.values()) {
        if (look.suspect().contains(suspect.words())) {
          assertThat(look.openings()).as(look.words()).containsAll(suspect.openings());
        }
      }
    }
  }

  @Test
  void everyLookHasASuspectAndSomethingToOpen() {
    for (DebrisLook look : DebrisLook.values()) {
      assertThat(look.openings()).as(look.words()).isNotEmpty();
      assertThat(look.suspect()).isNotBlank();
    }
  }

  @Test
  void whatIsOpenedAndWhatItToldIsSaidInWords() {
    assertThat(Opening.FILTER.title()).isEqualTo("Oil filter");
    assertThat(Opening.FILTER.sentence()).isEqualTo("Cut the filter open and pull out the pleats.");
    assertThat(ReachedMains.YES.words()).isEqualTo("yes: a bearing shows it");
    assertThat(ReachedMains.OPEN.words()).startsWith("not answered");
  }
}
