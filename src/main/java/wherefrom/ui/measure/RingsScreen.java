package wherefrom.ui.measure;

import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import wherefrom.job.numbers.RingFiling;
import wherefrom.job.numbers.RingGapRow;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.TagKey;

/** The card of ring filing: every ring of every bore, what is to be filed off it, and its tick. */
public final class RingsScreen extends ListPage {
  private final TagKey tag;
  private final KeyRow keys;
  private final Foot foot;
  private List<RingGapRow> all = List.of();
  private Runnable first = () -> {};

  public RingsScreen(ScreenContext context) {
    super(context, "Ring filing");
    tag = tag(() -> first.run());
    keys = KeyRow.of(context);
    foot = new Foot(context, tag, keys);
    layOut(foot);
  }

  @Override
  public String aside() {
    long done = all.stream().filter(row -> row.state() == RingGapRow.State.DONE).count();
    return all.isEmpty() ? "" : done + " of " + all.size() + " done";
  }

  @Override
  protected String whenEmpty() {
    return "Type the gap that each ring wants. Then this card lists what to file.";
  }

  @Override
  protected List<Region> rows() {
    return all.stream().map(this::row).toList();
  }

  @Override
  protected void refresh() {
    all = new RingFiling(context.getJob()).rows();
    super.refresh();
    Optional<RingGapRow> next =
        all.stream().filter(row -> row.state() != RingGapRow.State.DONE).findFirst();
    foot.offerTag(all.isEmpty() || next.isPresent());
    // Where no ring has one yet it is what the tag is for.
    keys.setActs(all.isEmpty() ? List.of() : List.of(act("Wanted gap", this::want)));
    tag.setWords(
        next.map(row -> "Next: " + touch().brief(row.words(), row.brief()))
            .orElse("Type the wanted gap"),
        next.map(row -> touch().brief(brief(row), "")).orElse(""));
    first = next.<Runnable>map(row -> () -> open(row)).orElse(this::want);
  }

  private void want() {
    new WantedGapFlow(context).ask();
  }

  private Region row(RingGapRow row) {
    return key(
        touch().brief(Words.capital(row.words()), row.brief()) + ": " + brief(row),
        touch().brief(row.figures(), ""),
        () -> open(row));
  }

  /** {@code file 0.0030 in}, {@code done}. */
  static String brief(RingGapRow row) {
    return row.state() == RingGapRow.State.TO_FILE
        ? "file " + row.toFileText()
        : row.state().words();
  }

  private void open(RingGapRow row) {
    open(() -> new RingScreen(context, row.where(), row.ring()));
  }
}
