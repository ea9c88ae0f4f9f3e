package wherefrom.ui.record;

import java.util.List;
import java.util.Locale;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.files.FileNames;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;
import wherefrom.job.print.Unprintable;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.record.RecordPlots;
import wherefrom.quantity.HomeCountry;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.numbers.PlotsScreen;

/** The build record, section by section; to be printed and taken along. */
public final class RecordScreen extends Page {

  private final Pager<RecordSection> rows;
  private final VBox view;

  public RecordScreen(ScreenContext context) {
    super(context, "Build record");
    rows = Pager.list(context.touch(), this::row);
    TagKey print =
        context.touch().tag("Look and print", "", () -> context.navigator().open(this::pages));
    KeyRow further =
        KeyRow.of(
            context,
            new KeyRow.Act("Tables…", () -> new TablesOut(context).ask()),
            new KeyRow.Act("Bench sheets…", () -> BenchSheets.ask(context)));
    view = Panes.column(context.scale(), rows, new Foot(context, print, further));
    lay(view);
  }

  private Screen pages() {
    BuildRecord record =
        BuildRecord.of(context.getJob(), context.services().photos())
            .withPlots(RecordPlots.of(context.getJob()));
    PaperSize size = PaperSize.usual(HomeCountry.of(Locale.getDefault(), context.state().units()));
    return new PaperScreen(
        context,
        new Paper(
            "Build record",
            FileNames.of(record.job(), "build record", ".pdf"),
            pdf -> context.services().reports().writeRecord(record, size, pdf),
            () -> Unprintable.warning(context.services().printer(), record)));
  }

  @Override
  public String aside() {
    int open = BuildRecord.countUnchecked(context.getJob());
    return open == 0 ? "all checked" : open + " not checked";
  }

  @Override
  protected void refresh() {
    rows.refill(
        BuildRecord.of(context.getJob()).withPlots(RecordPlots.of(context.getJob())).sections());
  }

  private Region row(RecordSection section) {
    return ListRow.key(
        context.touch(),
        section.title(),
        List.of(words(section)),
        () -> context.navigator().open(() -> screen(section)));
  }

  /** Plots are looked at, not read. */
  private Screen screen(RecordSection section) {
    return section.table() == RecordTable.PLOTS && !section.rows().isEmpty()
        ? PlotsScreen.ofRecord(context)
        : new RecordTableScreen(context, section);
  }

  /** {@code 74 lines, 12 OPEN}. */
  private static String words(RecordSection section) {
    int all = section.rows().size();
    long open = section.rows().stream().filter(RecordSection.Row::open).count();
    if (all == 0) {
      return section.empty();
    }
    String entries = Words.count(all, "line");
    if (open == 0) {
      return entries;
    }
    return entries + ", " + (open < all ? open + " " : all == 1 ? "" : "all ") + "OPEN";
  }
}
