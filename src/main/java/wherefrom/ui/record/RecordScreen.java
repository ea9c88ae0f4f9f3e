package wherefrom.ui.record;

import java.io.IOException;
import java.util.List;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.files.FileNames;
import wherefrom.files.Outgoing;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.ports.Reports;
import wherefrom.job.print.Unprintable;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.record.RecordPlots;
import wherefrom.text.Words;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.files.Saving;
import wherefrom.ui.numbers.PlotsScreen;

/** The build record, section by section; to be printed and taken along. */
public final class RecordScreen implements Screen {

  /** Writes the record to a file. */
  private interface Writing {
    void write(Reports reports, BuildRecord record, Outgoing out) throws IOException;
  }

  private final Desk desk;
  private final Pager<RecordSection> rows;
  private final VBox view;

  public RecordScreen(Desk desk) {
    this.desk = desk;
    rows = Pager.list(desk.touch(), this::row);
    Tiles keys =
        Tiles.row(
            desk.scale(),
            desk.touch()
                .primary(
                    desk.touch().brief("Save as PDF…", "PDF…"),
                    () -> save(".pdf", Reports::writeRecord)),
            desk.touch()
                .primary(
                    desk.touch().brief("Save as a table…", "Table…"),
                    () -> save(".csv", Reports::writeTables)));
    view = Panes.column(desk.scale(), rows, keys);
  }

  @Override
  public String title() {
    return "Build record";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    rows.refill(BuildRecord.of(desk.getJob()).withPlots(RecordPlots.of(desk.getJob())).sections());
  }

  @Override
  public void changed() {
    shown();
  }

  private Region row(RecordSection section) {
    return ListRow.key(
        desk.touch(),
        section.title(),
        List.of(words(section)),
        () -> desk.navigator().open(() -> screen(section)));
  }

  /** Plots are looked at, not read. */
  private Screen screen(RecordSection section) {
    return section.title().equals(BuildRecord.PLOTS) && !section.rows().isEmpty()
        ? PlotsScreen.ofRecord(desk)
        : new RecordTableScreen(desk, section);
  }

  /** {@code 74 entries, 12 of them open}. */
  private static String words(RecordSection section) {
    int all = section.rows().size();
    long open = section.rows().stream().filter(RecordSection.Row::open).count();
    if (all == 0) {
      return section.empty();
    }
    String entries = Words.count(all, "entry", "entries");
    return open == 0 ? entries : entries + ", " + open + " of them OPEN";
  }

  private void save(String ending, Writing writing) {
    BuildRecord record =
        BuildRecord.of(desk.getJob(), desk.equipment().photos())
            .withPlots(RecordPlots.of(desk.getJob()));
    new Saving<>(
            desk,
            "Where to save the record",
            FileNames.of(record.job(), "build record", ending),
            out -> write(writing, record, out),
            (file, written) -> desk.say("The record is " + file + "." + warning(ending, written)))
        .ask();
  }

  private BuildRecord write(Writing writing, BuildRecord record, Outgoing out) throws IOException {
    writing.write(desk.equipment().reports(), record, out);
    return record;
  }

  /** What of it does not print; a table holds every sign. */
  private String warning(String ending, BuildRecord record) {
    return ending.equals(".pdf")
        ? Unprintable.warning(desk.equipment().printer(), record).map(said -> " " + said).orElse("")
        : "";
  }
}
