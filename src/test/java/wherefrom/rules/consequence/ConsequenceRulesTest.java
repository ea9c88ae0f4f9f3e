package wherefrom.rules.consequence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.parts.PartKind;
import wherefrom.parts.Places;

class ConsequenceRulesTest {
  private static Setting setting(Layout layout) {
    return new Setting(layout, Places.of(layout, PartKind.all()));
  }

  @Test
  void rulesOneToThirtyThreeAreAllThere() {
    Set<String> wanted = new HashSet<>();
    IntStream.rangeClosed(1, 33).forEach(at -> wanted.add("R" + at));
    assertThat(Set.copyOf(ConsequenceRules.all().stream().map(Rule::number).toList()))
        .isEqualTo(wanted);
  }

  @Test
  void everyKindOfChangeHasARule() {
    Set<ChangeKind> withRule = EnumSet.noneOf(ChangeKind.class);
    ConsequenceRules.all().forEach(rule -> withRule.addAll(rule.when()));
    assertThat(withRule).isEqualTo(EnumSet.allOf(ChangeKind.class));
  }

  @Test
  void everyRuleSaysWhereItComesFromAndEverySentenceEndsWithAStop() {
    for (Rule rule : ConsequenceRules.all()) {
      assertThat(rule.source()).as(rule.number()).isNotBlank();
      for (Then then : rule.thens()) {
        assertThat(then.sentence()).as(rule.number() + then.name()).matches("[A-Z].*[.?]");
      }
    }
  }

  /** Where each rule was read; all others are common practice, no source. */
  private static final Map<String, String> SOURCES =
      Map.ofEntries(
          Map.entry("R1", "a camshaft maker's tip page"),
          Map.entry("R2", "an overhaul article on studs, pushrods, lifters"),
          Map.entry("R6", "TM 10-3930-673-34, 3-126"),
          Map.entry("R8", "TM 9-2815-225-34&P, 3-196"),
          Map.entry("R11", "worked out from the geometry; verify with a checking pushrod"),
          Map.entry("R12", "TM 5-3810-289-34, 3-54"),
          Map.entry("R14", "a repair manual, pp. 3-61/62; TM 9-8000, fig. 2-50"),
          Map.entry("R16", "TM 5-3805-262-34, 4-24"),
          Map.entry("R22", "TM 9-2815-237-34"),
          Map.entry("R23", "TM 9-2815-256-24, 3-180"),
          Map.entry("R26", "an overhaul article on studs, pushrods, lifters"));

  @Test
  void everyRuleNamesTheBookThatItWasReadInOrSaysThatItHasNone() {
    for (Rule rule : ConsequenceRules.all()) {
      assertThat(rule.source())
          .as(rule.number())
          .isEqualTo(SOURCES.getOrDefault(rule.number(), "common practice, no source"));
    }
  }

  /** Two of one name and effect would stand for one, and the later change hide the earlier. */
  @Test
  void oneRuleNamesEachOfItsConsequencesOnce() {
    List<String> names = new ArrayList<>();
    for (Rule rule : ConsequenceRules.all()) {
      for (Then then : rule.thens()) {
        names.add(rule.number() + ":" + then.name() + " " + then.effect());
      }
    }
    assertThat(names).doesNotHaveDuplicates();
  }

  @Test
  void everyChangeOnEveryReadyLayoutEndsAndNamesOnlyItsPlaces() {
    int seen = 0;
    for (Layout layout : ReadyLayouts.all()) {
      Setting setting = setting(layout);
      for (ChangeKind kind : ChangeKind.values()) {
        for (String where : kind.reach().where(layout)) {
          for (Consequence consequence : ConsequenceRules.of(Change.at(kind, where), setting)) {
            seen++;
            assertThat(setting.places()).containsAll(consequence.places());
            assertThat(consequence.firstCause().kind()).isEqualTo(kind);
          }
        }
      }
    }
    assertThat(seen).isGreaterThan(1000);
  }

  @Test
  void newCamOfAnEightCylinderEngineWantsSixteenLifters() {
    Setting setting = setting(ReadyLayouts.find("v8-odd-even").orElseThrow());
    Consequence lifters = ConsequenceRules.of(Change.of(ChangeKind.NEW_FLAT_CAM), setting).get(0);
    assertThat(lifters.pieces()).isEqualTo(16);
    assertThat(lifters.severity()).isEqualTo(Severity.BLOCK);
    assertThat(lifters.subject()).isEqualTo("lifters");
  }

  @Test
  void splitCaseWithoutMainCapsHasNoCapsToCheck() {
    Setting setting = setting(ReadyLayouts.find("opposed-4").orElseThrow());
    assertThat(ConsequenceRules.of(Change.of(ChangeKind.LINE_HONED), setting))
        .extracting(Consequence::name)
        .doesNotContain("caps");
  }
}
