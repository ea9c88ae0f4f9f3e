package wherefrom.rules.consequence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.rules.size.ChangeText;

/** What a change covers, what it is called, and what work at the machine shop amounts to. */
class ChangeScenariosTest {
  private static final Layout V8 = ReadyLayouts.find("v8-odd-even").orElseThrow();
  private static final Layout INLINE_4 = ReadyLayouts.find("inline-4").orElseThrow();
  private static final Setting WHOLE = setting(V8, PartKind.all());

  private static Setting setting(Layout layout, Set<PartKind> kinds) {
    return new Setting(layout, Places.of(layout, kinds));
  }

  private static Consequence one(String name, Change change, Setting setting) {
    return ConsequenceRules.of(change, setting).stream()
        .filter(it -> (it.rule() + ":" + it.name()).equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> names(Change change, Setting setting) {
    return ConsequenceRules.of(change, setting).stream()
        .map(it -> it.rule() + ":" + it.name())
        .toList();
  }

  private static List<String> places(Consequence consequence) {
    return consequence.places().stream().map(Place::key).toList();
  }

  private static Place place(String key) {
    return Place.find(key).orElseThrow();
  }

  @Test
  void whoseTagsAreOffTheWholeBigEndAreAllOfNewMates() {
    assertThat(places(one("R3:as-new-mate", Change.at(ChangeKind.SLOT_UNKNOWN, "R3L"), WHOLE)))
        .containsExactlyInAnyOrder("rod-shell@R3U", "rod@R3U", "rod-cap@R3L", "rod-shell@R3L");
    assertThat(places(one("R3:as-new-mate", Change.at(ChangeKind.SLOT_UNKNOWN, "M2U"), WHOLE)))
        .containsExactlyInAnyOrder("main-shell@M2U", "main-cap@M2L", "main-shell@M2L");
    assertThat(places(one("R3:as-new-mate", Change.at(ChangeKind.SLOT_UNKNOWN, "rod@R3U"), WHOLE)))
        .containsExactly("rod@R3U");
  }

  @Test
  void aChangeOfAPlaceIsOneThatTheEngineCanName() {
    assertThat(Change.at(ChangeKind.SLOT_UNKNOWN, "").findFault(WHOLE)).isEmpty();
    assertThat(Change.at(ChangeKind.SLOT_UNKNOWN, "lifter@3EX").findFault(WHOLE)).isEmpty();
    assertThat(Change.at(ChangeKind.SLOT_UNKNOWN, "3EX").findFault(WHOLE)).isEmpty();
    assertThat(Change.at(ChangeKind.SLOT_UNKNOWN, "nowhere").findFault(WHOLE))
        .hasValueSatisfying(it -> assertThat(it).startsWith("\"nowhere\" is not where"));
    assertThat(Change.at(ChangeKind.BORED, "B9").findFault(WHOLE)).isPresent();
    assertThat(Change.at(ChangeKind.BORED, "B8").findFault(WHOLE)).isEmpty();
  }

  @Test
  void anEngineOfOneBankHasNoOtherHeadToCutAlike() {
    Change milled = Change.of(ChangeKind.HEAD_MILLED);
    assertThat(names(milled, setting(INLINE_4, PartKind.all()))).doesNotContain("R14:equal-cut");
    assertThat(names(milled, WHOLE)).contains("R14:equal-cut");
  }

  @Test
  void aMainCapOfAnotherHousingIsPaidForAtItsMainAndARodsIsNot() {
    Consequence housing = one("R23:housing", Change.at(ChangeKind.CAP_LOST, "M3"), WHOLE);
    assertThat(housing.wanted()).containsExactly(new Wanted(Goods.HOUSING, Optional.empty(), "M3"));
    assertThat(names(Change.at(ChangeKind.CAP_LOST, "R3"), WHOLE))
        .contains("R23:align-bore")
        .doesNotContain("R23:housing");
  }

  /** A change that names no cylinder is made on all of them. */
  @Test
  void honingWithoutACylinderIsHoningOfAll() {
    assertThat(one("R19:rings", Change.of(ChangeKind.HONED), WHOLE).pieces()).isEqualTo(8);
    assertThat(places(one("R19:piston-clearance", Change.of(ChangeKind.HONED), WHOLE))).hasSize(8);
    assertThat(one("R19:rings", Change.at(ChangeKind.HONED, "B3"), WHOLE).pieces()).isEqualTo(1);
    assertThat(places(one("R19:piston-clearance", Change.at(ChangeKind.HONED, "B3"), WHOLE)))
        .containsExactly("piston@B3");
  }

  @Test
  void onlyWhatIsBannedHasAReasonToBeRenewed() {
    for (ChangeKind kind : ChangeKind.values()) {
      for (Consequence it : ConsequenceRules.of(Change.of(kind), WHOLE)) {
        if (!it.effect().bans()) {
          assertThat(it.renewal()).as(it.key()).isEqualTo(Renewal.WEAR);
        }
      }
    }
    assertThat(one("R7:cam", Change.of(ChangeKind.FLAT_TO_ROLLER), WHOLE).goods())
        .contains(Goods.ROLLER_CAM);
  }

  @Test
  void whatIsSaidOfTheLastConsequenceIsSaidOfNoOther() {
    Rule rule =
        Rule.of("R0", "Test", ChangeKind.BORED)
            .buy("first", Count.ONE, Goods.PLUGS)
            .buy("last", Count.ONE, Goods.PLUGS)
            .ofSort(Goods.STUDS)
            .from("a book");
    assertThat(rule.thens())
        .extracting(ConsequenceTemplate::sort)
        .containsExactly(Optional.empty(), Optional.of(Goods.STUDS));
    assertThat(rule.thens()).extracting(ConsequenceTemplate::source).containsExactly("", "a book");
    assertThat(rule.thens()).extracting(ConsequenceTemplate::renewal).containsOnly(Renewal.WEAR);
    Rule banned =
        Rule.of("R0", "Test", ChangeKind.BORED)
            .mustBeNew(Severity.BLOCK, PlaceScope.ALL, Set.of(PartKind.LIFTER), "All new.")
            .ofSort(Goods.ROLLER_LIFTERS);
    assertThat(banned.thens())
        .extracting(ConsequenceTemplate::renewal)
        .containsExactly(Renewal.SORT);
  }

  /** What a check may cost: the studs where it says so, else the parts that it looks at. */
  @Test
  void whereACheckFailsItsPartsAreNeededOrWhatItNames() {
    Consequence studs = one("R9:studs", Change.of(ChangeKind.LIFT_INCREASED), WHOLE);
    assertThat(studs.wanted())
        .hasSize(16)
        .allMatch(wanted -> wanted.thing() == Goods.SCREW_IN_STUDS);
    assertThat(studs.pieces()).isZero();
    Consequence springs =
        one("R12:installed-height", Change.at(ChangeKind.VALVE_JOB, "left"), WHOLE);
    assertThat(springs.wanted())
        .hasSize(8)
        .allMatch(wanted -> wanted.thing() == Goods.VALVE_SPRINGS);
    assertThat(one("R6:bearings", Change.of(ChangeKind.NEW_FLAT_CAM), WHOLE).wanted()).isEmpty();
  }

  @Test
  void aConsequenceSpeaksInWords() {
    Change milled = Change.at(ChangeKind.HEAD_MILLED, "left");
    assertThat(one("R14:dowels", milled, WHOLE).headline()).isEqualTo("check before closing");
    assertThat(one("R14:dowels", milled, WHOLE).whereWords()).isEmpty();
    assertThat(one("R11:pushrod-length", milled, WHOLE).reasons())
        .containsExactly("head milled, left bank", "valvetrain geometry changed, left bank");
    assertThat(one("R11:pushrod-length", milled, WHOLE).whereWords())
        .isEqualTo("at 1 IN, 1 EX, 3 IN, 3 EX, 5 IN, 5 EX, 7 IN, 7 EX");
    assertThat(one("R1:new", Change.of(ChangeKind.NEW_FLAT_CAM), WHOLE).whereWords())
        .isEqualTo("at 1 IN, 1 EX, 2 IN, 2 EX, 3 IN, 3 EX and 10 more places");
    assertThat(
            one("R18:new", Change.of(ChangeKind.BORED), setting(V8, PartKind.alwaysOn()))
                .whereWords())
        .isEqualTo("not tracked here: no tag will stop them, check it yourself");
    assertThat(List.of(Severity.values()).stream().map(Severity::word).toList())
        .containsExactly("block", "warning", "check");
  }

  @Test
  void onlyAShopsDiameterOrDepthComesBackWithItsSize() {
    assertThat(
            ShopWork.BORE.changes(List.of("B3"), Optional.of(Amount.of("4.0300", Unit.INCH)), V8))
        .containsExactly(ChangeText.read(ChangeKind.BORED, "B3", "4.0300 in", Unit.INCH));
    assertThat(
            ShopWork.MILL_HEAD.changes(
                List.of("left"), Optional.of(Amount.of("0.010", Unit.INCH)), V8))
        .containsExactly(ChangeText.read(ChangeKind.HEAD_MILLED, "left", "0.010 in", Unit.INCH));
    assertThat(
            ShopWork.HONE.changes(List.of("B3"), Optional.of(Amount.of("4.0300", Unit.INCH)), V8))
        .containsExactly(Change.at(ChangeKind.HONED, "B3"));
    assertThat(ShopWork.BORE.isToDiameter()).isTrue();
    assertThat(ShopWork.MILL_HEAD.isToDiameter()).isFalse();
    assertThat(ShopWork.HONE.isToDiameter()).isFalse();
  }

  @Test
  void rodsGoToTheShopPieceByPieceAndABlockInOne() {
    assertThat(ShopWork.RESIZE.countPieces(List.of("B1", "B4", "B6"))).isEqualTo(3);
    assertThat(ShopWork.BORE.countPieces(List.of("B1", "B4", "B6"))).isEqualTo(1);
    assertThat(ShopWork.RESIZE.usualThing()).isEqualTo("rods with their caps");
    assertThat(ShopWork.OTHER.usualThing()).isEmpty();
  }

  /** One head of two: which? Both of two need not be named. */
  @Test
  void fewerHeadsThanTheEngineHasMustBeNamed() {
    assertThat(ShopWork.VALVES.findFault(List.of(), 1, V8)).contains("Say which: left, right.");
    assertThat(ShopWork.VALVES.findFault(List.of(), 2, V8)).isEmpty();
    assertThat(ShopWork.BORE.findFault(List.of(), 1, V8)).isEmpty();
    assertThat(ShopWork.BORE.findFault(List.of("B9"), 1, V8)).isPresent();
    assertThat(ShopWork.POLISH.findFault(List.of("B1"), 1, V8)).isPresent();
  }

  @Test
  void aPartThatGoesToTheShopSaysWhereTheWorkIsDone() {
    assertThat(ShopWork.VALVES.findWhere(place("valve@4EX"), V8)).contains("right");
    assertThat(ShopWork.VALVES.findWhere(place("piston@B4"), V8)).isEmpty();
    assertThat(ShopWork.RESIZE.findWhere(place("rod-cap@R3L"), V8)).contains("B3");
    assertThat(ShopWork.RESIZE.findWhere(place("valve@3EX"), V8)).isEmpty();
    assertThat(ShopWork.BORE.findWhere(place("valve@3EX"), V8)).isEmpty();
    assertThat(ShopWork.VALVES.isFor(PartKind.VALVE)).isTrue();
    assertThat(ShopWork.VALVES.isFor(PartKind.ROD)).isFalse();
    assertThat(ShopWork.RESIZE.isFor(PartKind.ROD_CAP)).isTrue();
    assertThat(ShopWork.CRACK_TEST.isFor(PartKind.PISTON)).isTrue();
  }
}
