package wherefrom.rules.consequence;

import static wherefrom.rules.consequence.PlaceScope.ALL;
import static wherefrom.rules.consequence.Severity.WARN;

import java.util.List;
import java.util.Set;
import wherefrom.inspection.Sources;

/** Milled faces and the gasket between them. */
final class HeadAndDeckRules {

  static final List<Rule> ROWS =
      List.of(
          milled(
              Rule.of("R14", "Head milled", ChangeKind.HEAD_MILLED)
                  .work("milling", Count.PER_BANK, Goods.HEAD_MILLING),
              "Cut both heads of the engine alike.",
              Sources.TM_8000),
          milled(
                  Rule.of("R15", "Deck milled", ChangeKind.DECK_MILLED)
                      .work("milling", Count.PER_BANK, Goods.DECK_MILLING),
                  "Cut both decks of the block alike.",
                  Sources.PRACTICE)
              .after("deck-clearance", "Measure the deck clearance of every piston.")
              .after("timing-cover", "Check the line of timing cover and gaskets."),
          fit(
                  Rule.of("R40", "Head gasket of another thickness", ChangeKind.GASKET_THICKNESS),
                  Sources.PRACTICE)
              .after(
                  "intake-faces",
                  "Try the manifold. The heads of a V engine sit higher or lower now.")
              .perhaps(Count.PER_BANK, Goods.INTAKE_CUT)
              .onlyFor(Setting::isV));

  private HeadAndDeckRules() {}

  private static Rule milled(Rule rule, String alike, String ratioSource) {
    return fit(rule, ratioSource)
        .know("equal-cut", WARN, ALL, Set.of(), alike)
        .onlyFor(Setting::isSeveralBanks)
        .after("intake-faces", "Try the manifold. A larger cut wants the intake faces or it cut.")
        .onlyFor(Setting::isV)
        .work("intake", Count.PER_BANK, Goods.INTAKE_CUT)
        .onlyFor(Setting::isV)
        .after("dowels", "Check that the dowels do not bottom.")
        .after(
            "blind-holes",
            "Try every head bolt in its hole. None may bottom in a blind hole before it clamps.")
        .after("least-thickness", "Check the minimum thickness in the manual.")
        .leadsTo(ChangeKind.GEOMETRY_CHANGED);
  }

  /** Whatever brings head and piston nearer to each other, or farther apart. */
  private static Rule fit(Rule rule, String ratioSource) {
    return rule.buy("head-gasket", Count.PER_BANK, Goods.HEAD_GASKETS)
        .after("compression-ratio", "Work out the compression ratio again.")
        .from(ratioSource)
        .after("piston-head", "Check the clearance from piston to head.")
        .after("piston-valve", "Check the clearance from piston to valve with clay or dial.");
  }
}
