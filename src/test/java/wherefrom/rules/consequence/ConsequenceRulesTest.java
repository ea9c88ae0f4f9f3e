package wherefrom.rules.consequence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
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
  void rulesOneToTwentyNineAreAllThere() {
    Set<String> wanted = new HashSet<>();
    IntStream.rangeClosed(1, 29).forEach(at -> wanted.add("R" + at));
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

  @Test
  void oneRuleNamesEachOfItsConsequencesOnce() {
    List<String> names = new ArrayList<>();
    for (Rule rule : ConsequenceRules.all()) {
      for (Then then : rule.thens()) {
        if (then.effect().isCheck()) {
          names.add(rule.number() + ":" + then.name());
        }
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
