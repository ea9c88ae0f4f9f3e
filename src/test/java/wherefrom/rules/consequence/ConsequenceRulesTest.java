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
import wherefrom.inspection.Citations;
import wherefrom.parts.PartKind;
import wherefrom.parts.Places;

class ConsequenceRulesTest {
  private static Setting setting(Layout layout) {
    return new Setting(layout, Places.of(layout, PartKind.all()));
  }

  @Test
  void rulesOneToFortyOneAreAllThere() {
    Set<String> wanted = new HashSet<>();
    IntStream.rangeClosed(1, 41).forEach(at -> wanted.add("R" + at));
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
      for (ConsequenceTemplate then : rule.thens()) {
        assertThat(then.sentence()).as(rule.number() + then.name()).matches("[A-Z].*[.?]");
      }
    }
  }

  private static final String OVERHAUL =
      "Mitsubishi Montero, Service Manual, 1998, general engine overhaul";

  /** Where each consequence was read; all others are common practice, no source. */
  private static final Map<String, String> SOURCES =
      Map.ofEntries(
          Map.entry(
              "R1:new",
              "brianesser.com, \"Why must I install new lifters with my new camshaft?\", undated"),
          Map.entry("R2:same-lobe", OVERHAUL),
          Map.entry("R2:crown", OVERHAUL),
          Map.entry("R2:new", OVERHAUL),
          Map.entry("R6:bearings", "TM 10-3930-673-34, 3-126"),
          Map.entry("R8:worn-mate", "TM 9-2815-225-34&P, 3-196"),
          Map.entry(
              "R11:pushrod-length", "worked out from the geometry; verify with a checking pushrod"),
          Map.entry("R11:preload", "worked out from the geometry; verify with a checking pushrod"),
          Map.entry("R11:sweep", "worked out from the geometry; verify with a checking pushrod"),
          Map.entry("R12:installed-height", "TM 5-3810-289-34, 3-54"),
          Map.entry("R14:compression-ratio", "TM 9-8000, fig. 2-50"),
          Map.entry("R16:rod-all-alike", "TM 5-3805-262-34, 4-24"),
          Map.entry("R16:main-all-alike", "TM 5-3805-262-34, 4-24"),
          Map.entry("R22:new", "TM 9-2815-237-34, bearings, before 2-11"),
          Map.entry("R23:align-bore", "TM 9-2815-256-24, 3-180"),
          Map.entry("R26:repair", OVERHAUL),
          Map.entry(
              "R36:roller-condition",
              "\"Guidelines for Reusable Parts: Lifters\" (scribd.com, 553560845), undated"));

  @Test
  void aBookStandsBesideWhatItSaysAndBesideNothingElse() {
    Set<String> met = new HashSet<>();
    Change anywhere = Change.of(ChangeKind.NEW_FLAT_CAM);
    Setting setting = setting(ReadyLayouts.find("v8-odd-even").orElseThrow());
    for (Rule rule : ConsequenceRules.all()) {
      for (ConsequenceTemplate then : rule.thens()) {
        String name = rule.number() + ":" + then.name();
        met.add(name);
        assertThat(then.apply(rule, List.of(anywhere), setting).source())
            .as(name)
            .isEqualTo(SOURCES.getOrDefault(name, "common practice, no source"));
      }
    }
    assertThat(met).containsAll(SOURCES.keySet());
    assertThat(SOURCES.values()).allMatch(Citations::canBeFound);
  }

  /** What must be new by size or sort stops new parts of before; all else by wear alone. */
  private static final Map<String, Renewal> RENEWALS =
      Map.ofEntries(
          Map.entry("R7:new", Renewal.SORT),
          Map.entry("R7:shorter", Renewal.SORT),
          Map.entry("R34:new", Renewal.SORT),
          Map.entry("R34:longer", Renewal.SORT),
          Map.entry("R16:rod-new", Renewal.SIZE),
          Map.entry("R16:main-new", Renewal.SIZE),
          Map.entry("R18:new", Renewal.SIZE),
          Map.entry("R23:align-bore", Renewal.SIZE),
          Map.entry("R30:new", Renewal.SORT),
          Map.entry("R31:new", Renewal.SIZE),
          Map.entry("R32:new", Renewal.SORT),
          Map.entry("R37:rockers", Renewal.SORT),
          Map.entry("R38:new", Renewal.SIZE));

  @Test
  void everyBanSaysWhyItRenews() {
    for (Rule rule : ConsequenceRules.all()) {
      for (ConsequenceTemplate then : rule.thens()) {
        String name = rule.number() + ":" + then.name();
        if (then.effect().bans()) {
          assertThat(then.renewal()).as(name).isEqualTo(RENEWALS.getOrDefault(name, Renewal.WEAR));
        }
      }
    }
  }

  /** Names stand in logbooks; the words of work and sorts are names of prices, too. */
  @Test
  void theNamesOfWorkThatHadPricesBeforeAreStillTheSame() {
    Setting setting = setting(ReadyLayouts.find("v8-odd-even").orElseThrow());
    List<String> priced = new ArrayList<>();
    for (ChangeKind kind : ChangeKind.values()) {
      String where = kind.reach().where(setting.layout()).get(0);
      ConsequenceRules.of(Change.at(kind, where), setting)
          .forEach(one -> one.wanted().forEach(wanted -> priced.add(wanted.article().id())));
    }
    assertThat(priced)
        .contains(
            "head milled",
            "deck milled",
            "valve job: seats or faces ground",
            "bored",
            "intake faces or manifold cut",
            "head gaskets",
            "valve stem seals",
            "piston ring sets",
            "piston ring sets, oversize",
            "roller cam",
            "roller lifters",
            "cam",
            "crank",
            "core plugs and gallery plugs",
            "gasket set",
            "seals");
  }

  /** Two of one name and effect would stand for one, and the later change hide the earlier. */
  @Test
  void oneRuleNamesEachOfItsConsequencesOnce() {
    List<String> names = new ArrayList<>();
    for (Rule rule : ConsequenceRules.all()) {
      for (ConsequenceTemplate then : rule.thens()) {
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
