package wherefrom.ui.changes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.inspection.Look;
import wherefrom.job.StandingRule;
import wherefrom.parts.PartKind;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.Effect;
import wherefrom.rules.consequence.Reach;
import wherefrom.rules.consequence.Setting;
import wherefrom.ui.sample.SampleJob;

class ChangesModelTest {
  private final SampleJob sample = SampleJob.apart();
  private final ChangesModel model = new ChangesModel(sample.job);

  @Test
  void everyKindOfChangeIsOffered() {
    List<ChangeKind> offered = new ArrayList<>();
    for (ChangesModel.Group group : ChangesModel.Group.values()) {
      offered.addAll(model.kinds(group));
    }
    List<ChangeKind> twice = new ArrayList<>(offered);
    EnumSet.allOf(ChangeKind.class).forEach(twice::remove);
    assertThat(twice)
        .as("a cam is looked for under both")
        .containsExactlyInAnyOrder(
            ChangeKind.NEW_FLAT_CAM, ChangeKind.CAM_REGROUND, ChangeKind.NEW_ROLLER_CAM);
    assertThat(new TreeSet<>(offered))
        .containsExactlyInAnyOrderElementsOf(
            EnumSet.complementOf(EnumSet.of(ChangeKind.ROLLER_TO_FLAT)));
  }

  @Test
  void whatAnEngineWithRollersCannotHaveIsNotOffered() {
    model.make(Change.of(ChangeKind.FLAT_TO_ROLLER));
    assertThat(model.kinds(ChangesModel.Group.WORK))
        .contains(ChangeKind.ROLLER_TO_FLAT)
        .doesNotContain(ChangeKind.FLAT_TO_ROLLER);
  }

  @Test
  void everyPlaceThatIsOfferedIsOneThatTheChangeCanHave() {
    for (Layout layout : ReadyLayouts.all()) {
      for (ChangeKind kind : ChangeKind.values()) {
        Reach reach = kind.reach();
        if (reach != Reach.WHOLE && reach != Reach.PLACE) {
          Set<String> offered = new TreeSet<>(WherePlaces.of(layout, reach).keys().values());
          assertThat(offered).containsExactlyInAnyOrderElementsOf(reach.where(layout));
        }
      }
      for (PartKind kind : PartKind.values()) {
        WherePlaces.of(layout, kind)
            .keys()
            .forEach(
                (place, where) ->
                    assertThat(
                            Change.at(ChangeKind.SLOT_UNKNOWN, kind.key() + "@" + where)
                                .findFault(new Setting(layout, List.of())))
                        .isEmpty());
      }
    }
  }

  @Test
  void whatIsForbiddenStandsBeforeWhatIsOnlyToKnow() {
    List<Effect> effects =
        model.preview(Change.of(ChangeKind.NEW_FLAT_CAM)).stream()
            .map(consequence -> consequence.effect())
            .toList();
    assertThat(effects).isSorted().startsWith(Effect.MUST_BE_NEW).contains(Effect.KNOW);
    assertThat(model.standing()).noneMatch(rule -> rule.consequence().rule().equals("R1"));
  }

  @Test
  void theCostOfAChangeIsSaidBeforeItIsPlanned() {
    assertThat(model.cost(Change.of(ChangeKind.NEW_FLAT_CAM)).orElseThrow())
        .contains("+16 lifters, +1 cam. ", "No prices typed.");
    assertThat(model.cost(Change.of(ChangeKind.LIFT_INCREASED))).isEmpty();
  }

  @Test
  void anAnsweredCheckLeavesTheOpenOnesUnlessItFailed() {
    model.make(Change.of(ChangeKind.GASKET_THICKNESS));
    int open = model.openChecks().size();
    StandingRule unanswered = model.find("R11:preload").orElseThrow();
    assertThat(RuleRows.heading(unanswered, false)).isEqualTo("To do: check before closing");
    assertThat(RuleRows.heading(unanswered, true)).isEqualTo("Check before closing");
    assertThat(model.answer("R11:preload", Look.FAIL, "no travel left")).contains("It stays open");
    assertThat(model.openChecks()).hasSize(open);
    StandingRule failed = model.find("R11:preload").orElseThrow();
    assertThat(RuleRows.heading(failed, false)).isEqualTo("FAIL: check before closing");
    assertThat(RuleRows.heading(failed, true)).isEqualTo("FAIL: check before closing");
    model.answer("R11:preload", Look.PASS, "");
    assertThat(model.openChecks()).hasSize(open - 1);
  }

  @Test
  void aPartOfUnknownSlotIsStoppedAndItsPageSaysWhy() {
    model.make(Change.at(ChangeKind.SLOT_UNKNOWN, "lifter@3EX"));
    assertThat(model.standingFor(sample.part("lifter@3EX").item()))
        .anyMatch(rule -> rule.consequence().effect() == Effect.FORBIDDEN)
        .allMatch(rule -> List.of("R2", "R3").contains(rule.consequence().rule()));
    assertThat(model.made()).containsExactly(Change.at(ChangeKind.SLOT_UNKNOWN, "lifter@3EX"));
  }
}
