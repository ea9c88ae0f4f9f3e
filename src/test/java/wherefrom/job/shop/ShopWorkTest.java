package wherefrom.job.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wherefrom.job.SizesBench;
import wherefrom.parts.PartKind;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.ShopWork;

/** Work that is counted back is the change: it binds as one that was recorded by hand. */
class ShopWorkTest {
  private final SizesBench bench = SizesBench.typed();

  private ShopOrder order(ShopWork work, String size, String within, String... where) {
    return new ShopOrder(work, List.of(where), "block", 2, "the work", size, within, false);
  }

  private void sent(ShopWork work, String size, String... where) {
    assertThat(bench.shop.add(1, order(work, size, "", where)))
        .isInstanceOf(MachineShop.Answer.Done.class);
  }

  private String refused(ShopOrder order) {
    return ((MachineShop.Answer.Refused) bench.shop.add(1, order)).sentence();
  }

  private String back(String size) {
    return ((MachineShop.Answer.Done) bench.shop.backByCount(1, 1, 2, size, "")).sentence();
  }

  private Set<String> openChecks() {
    return bench.planning.openChecks().stream()
        .map(rule -> rule.consequence().rule())
        .collect(Collectors.toSet());
  }

  @Test
  void aBlockThatComesBackBoredStopsTheOldPistons() {
    sent(ShopWork.BORE, "3.9000");
    assertThat(bench.bench.word("piston@B3")).isEqualTo("right place");
    assertThat(openChecks()).doesNotContain("R18");
    back("3.9002");
    assertThat(bench.bench.word("piston@B3")).isEqualTo("must be new");
    assertThat(openChecks()).contains("R18");
    assertThat(bench.toBuy(PartKind.PISTON)).containsExactly("0.030 in over (thirty over)");
    assertThat(bench.planning.made())
        .extracting(change -> change.words())
        .contains("bored, cylinder 3, bore, 3.9002 in");
  }

  @Test
  void whatIsStillAtTheShopIsBoughtInTheSizeThatIsWanted() {
    sent(ShopWork.GRIND_RODS, "ten under");
    bench.toReplace("rod-shell@R3U");
    assertThat(bench.toBuy(PartKind.ROD_SHELL))
        .containsExactly("0.010 in under (ten under), once ground");
    back("");
    assertThat(bench.toBuy(PartKind.ROD_SHELL)).containsExactly("0.010 in under (ten under)");
  }

  @Test
  void aBoreOfAnotherSizeThanWantedIsBoughtForAsItCameBack() {
    sent(ShopWork.BORE, "0.030 in");
    back("3.9041");
    assertThat(bench.toBuy(PartKind.PISTON))
        .containsExactly(
            "not known: 3.9041 in is between the usual steps: ask the machine shop what fits");
  }

  @Test
  void aStepIsTurnedIntoTheDiameterThatComesBack() {
    sent(ShopWork.GRIND_MAINS, "0.010 in");
    assertThat(bench.shop.visits().get(0).lines().get(0).target()).contains("2.6000 in");
    assertThat(back("2.6000")).contains("off by 0.0000 in");
    assertThat(bench.bench.word("main-shell@M2L")).isEqualTo("must be new");
    assertThat(bench.bench.word("rod-shell@R3U")).isEqualTo("right place");
  }

  @Test
  void takingBackTheCountTakesBackTheChange() {
    sent(ShopWork.BORE, "3.9000");
    back("3.9000");
    bench.bench.job.undo();
    assertThat(bench.bench.word("piston@B3")).isEqualTo("right place");
  }

  @Test
  void aResizedRodAsksForShellsAndLengthAtItsOwnCylinder() {
    sent(ShopWork.RESIZE, "", "B3", "B5");
    back("");
    assertThat(openChecks()).contains("R20");
    assertThat(bench.bench.word("rod-shell@R3U")).isEqualTo("must be new");
    assertThat(bench.bench.word("rod-shell@R1U")).isEqualTo("right place");
  }

  @Test
  void aTaggedRodThatComesBackResizedIsTheSameChange() {
    List<Integer> rods = List.of(bench.bench.item("rod@R3U"));
    assertThat(bench.shop.send(1, rods, "resize the big end", ShopWork.RESIZE))
        .isInstanceOf(MachineShop.Answer.Done.class);
    assertThat(openChecks()).doesNotContain("R20");
    bench.shop.backByScan(rods.get(0), "");
    assertThat(openChecks()).contains("R20");
    assertThat(bench.bench.word("rod-shell@R3U")).isEqualTo("must be new");
  }

  @Test
  void aCapIsNotResizedWithoutItsRod() {
    List<Integer> cap = List.of(bench.bench.item("rod-cap@R3L"));
    MachineShop.Answer alone = bench.shop.send(1, cap, "resize rods", ShopWork.RESIZE);
    assertThat(((MachineShop.Answer.Done) alone).sentence())
        .isEqualTo("1 on the slip. Rod 3 must go too, with both bolted together.");
    List<Integer> rod = List.of(bench.bench.item("rod@R3U"));
    MachineShop.Answer both = bench.shop.send(1, rod, "resize rods", ShopWork.RESIZE);
    assertThat(((MachineShop.Answer.Done) both).sentence()).isEqualTo("1 on the slip.");
  }

  /** Its big end cannot be measured without the rod; cracks are looked for in each alone. */
  @Test
  void aCapIsNotMeasuredWithoutItsRodEither() {
    List<Integer> cap = List.of(bench.bench.item("rod-cap@R3L"));
    MachineShop.Answer round = bench.shop.send(1, cap, "check the big end", ShopWork.OTHER);
    assertThat(((MachineShop.Answer.Done) round).sentence()).contains("Rod 3 must go too");
    List<Integer> other = List.of(bench.bench.item("rod-cap@R4L"));
    MachineShop.Answer cracks = bench.shop.send(2, other, "cracks", ShopWork.CRACK_TEST);
    assertThat(((MachineShop.Answer.Done) cracks).sentence()).isEqualTo("1 on the slip.");
    List<Integer> rod = List.of(bench.bench.item("rod@R5U"));
    MachineShop.Answer bush = bench.shop.send(3, rod, "bush the small end", ShopWork.OTHER);
    assertThat(((MachineShop.Answer.Done) bush).sentence()).isEqualTo("1 on the slip.");
  }

  @Test
  void aPushrodIsNotResized() {
    MachineShop.Answer answer =
        bench.shop.send(1, List.of(bench.bench.item("pushrod@3EX")), "resize", ShopWork.RESIZE);
    assertThat(((MachineShop.Answer.Refused) answer).sentence())
        .isEqualTo("\"resize rods\" is not work for a pushrod.");
  }

  /** Each kind against a list of its own: what it is once it is back. */
  @ParameterizedTest
  @EnumSource(ShopWork.class)
  void everyKindIsItsChangeOrNone(ShopWork work) {
    sent(
        work,
        "",
        switch (work) {
          case MILL_HEAD, VALVES -> new String[] {"left"};
          case RESIZE -> new String[] {"B3"};
          default -> new String[0];
        });
    int before = bench.planning.made().size();
    back("");
    Set<ChangeKind> made =
        bench.planning.made().stream()
            .skip(before)
            .map(change -> change.kind())
            .collect(Collectors.toCollection(() -> EnumSet.noneOf(ChangeKind.class)));
    Set<ChangeKind> wanted =
        switch (work) {
          case BORE -> Set.of(ChangeKind.BORED);
          case HONE -> Set.of(ChangeKind.HONED);
          case GRIND_RODS -> Set.of(ChangeKind.ROD_JOURNALS_GROUND);
          case GRIND_MAINS -> Set.of(ChangeKind.MAIN_JOURNALS_GROUND);
          case POLISH -> Set.of(ChangeKind.CRANK_POLISHED);
          case RESIZE -> Set.of(ChangeKind.ROD_RESIZED);
          case LINE_HONE -> Set.of(ChangeKind.LINE_HONED);
          case MILL_HEAD -> Set.of(ChangeKind.HEAD_MILLED);
          case MILL_DECK -> Set.of(ChangeKind.DECK_MILLED);
          case VALVES -> Set.of(ChangeKind.VALVE_JOB);
          case CRACK_TEST, STUD, OTHER -> Set.of();
        };
    assertThat(made).isEqualTo(wanted);
  }

  @Test
  void aWrongLineIsRefusedWithASentence() {
    assertThat(refused(order(ShopWork.BORE, "3.9000", "", "B9"))).contains("\"B9\" is not where");
    assertThat(refused(order(ShopWork.GRIND_RODS, "2.2300", "", "B3")))
        .isEqualTo(
            "\"grind the rod journals\" is done on the whole engine alike. Leave the places out.");
    assertThat(refused(order(ShopWork.BORE, "0.25 in", "")))
        .contains("not a size of a cylinder bore");
    assertThat(
            refused(
                new ShopOrder(ShopWork.MILL_HEAD, List.of(), "head", 1, "", "0.010", "", false)))
        .isEqualTo("Say which: left, right.");
    SizesBench untyped = SizesBench.untyped();
    MachineShop.Answer answer =
        untyped.shop.add(
            1, new ShopOrder(ShopWork.BORE, List.of(), "block", 1, "", "0.030", "", false));
    assertThat(((MachineShop.Answer.Refused) answer).sentence())
        .contains("type the standard size of the cylinder bore first");
  }
}
