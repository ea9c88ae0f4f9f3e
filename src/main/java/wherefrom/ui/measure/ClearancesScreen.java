package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.layout.Region;
import wherefrom.inspection.Look;
import wherefrom.inspection.measure.ClearancePair;
import wherefrom.job.BearingClearance;
import wherefrom.job.PairClearance;
import wherefrom.job.PairClearances;
import wherefrom.job.numbers.BobWeight;
import wherefrom.job.numbers.RingFiling;
import wherefrom.job.numbers.RingGapRow;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.TagKey;

/** What readings of two things give together: ring gaps to file, oil clearances, fits. */
public final class ClearancesScreen extends ListPage {
  private final MeasureModel model;
  private final TagKey tag;
  private final Foot foot;
  private Runnable first = () -> {};

  public ClearancesScreen(ScreenContext context) {
    super(context, "Clearances and fits");
    model = new MeasureModel(context.getJob());
    tag = tag(() -> first.run());
    foot = new Foot(context, tag, KeyRow.of(context));
    layOut(foot);
  }

  @Override
  protected void refresh() {
    super.refresh();
    Optional<PairClearance> due = due();
    foot.offerTag(due.isPresent());
    due.ifPresent(
        one -> {
          tag.setWords(
              "Next: "
                  + touch().brief(one.words() + ", ", one.brief() + " ")
                  + one.missing().get(0),
              touch().brief("for " + one.pair().title().toLowerCase(java.util.Locale.ROOT), ""));
          first = () -> PairScreen.measure(context, one);
        });
  }

  /** The one of which the other half is measured. */
  private Optional<PairClearance> due() {
    PairClearances clearances = clearances();
    return clearances.pairs().stream()
        .flatMap(pair -> clearances.list(pair).stream())
        .filter(one -> one.sequence() > 0 && clearances.findNext(one).isPresent())
        .findFirst();
  }

  private PairClearances clearances() {
    return new PairClearances(context.state());
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    rows.add(rings());
    rows.add(
        key(
            "Weights",
            touch()
                .brief(
                    BobWeight.isUsed(context.state().layout())
                        ? "matched sets and bob weight"
                        : "matched sets",
                    ""),
            () -> open(() -> new WeightsScreen(context))));
    rows.add(oil());
    for (ClearancePair pair : clearances().pairs()) {
      List<PairClearance> all = clearances().list(pair);
      rows.add(
          key(
              pair.title(),
              touch()
                  .brief(
                      standing(all.stream().map(PairClearance::look), known(all), all.size()), ""),
              () -> open(() -> new PairScreen(context, pair))));
    }
    return rows;
  }

  private Region rings() {
    List<RingGapRow> all = new RingFiling(context.getJob()).rows();
    long done = all.stream().filter(row -> row.state() == RingGapRow.State.DONE).count();
    String standing = all.isEmpty() ? "type the wanted gap" : done + " of " + all.size() + " done";
    return key(
        "Ring filing", touch().brief(standing, ""), () -> open(() -> new RingsScreen(context)));
  }

  private Region oil() {
    List<BearingClearance> all = model.clearances();
    long known = all.stream().filter(one -> one.missing().isEmpty()).count();
    return key(
        "Oil clearance",
        touch().brief(standing(all.stream().map(BearingClearance::look), known, all.size()), ""),
        () -> open(() -> new ClearanceScreen(context)));
  }

  private static long known(List<PairClearance> all) {
    return all.stream().filter(one -> one.missing().isEmpty()).count();
  }

  private static String standing(Stream<Look> looks, long known, int all) {
    List<Look> each = looks.toList();
    long open = each.stream().filter(look -> look == Look.SUSPECT).count();
    long failed = each.stream().filter(look -> look == Look.FAIL).count();
    return known
        + " of "
        + all
        + " known"
        + (open > 0 ? ", " + open + " undecided" : "")
        + (failed > 0 ? ", " + failed + " rejected" : "");
  }
}
