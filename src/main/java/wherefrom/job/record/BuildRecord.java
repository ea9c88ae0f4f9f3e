package wherefrom.job.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.pages.RecordPicture;
import wherefrom.job.pages.RecordPlot;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordSheets;
import wherefrom.job.pages.RecordTable;
import wherefrom.job.photos.Photos;
import wherefrom.job.timing.TimingRecord;
import wherefrom.job.torque.TorqueRecord;

/**
 * The build record as data: what came out of where, what was found and decided, what went where.
 *
 * @param begun the day of the first entry
 * @param asOf the day of the last entry
 * @param sections its tables; the first says in short what is done and what is not
 * @param plots curves and comparisons, to be drawn
 * @param pictures photographs
 * @param sheets the engine drawn, by cylinder; empty where a record is of tables alone
 */
public record BuildRecord(
    String job,
    String engine,
    LocalDate begun,
    LocalDate asOf,
    List<RecordSection> sections,
    List<RecordPlot> plots,
    List<RecordPicture> pictures,
    Optional<RecordSheets> sheets) {
  /** What stands under every record. */
  public static final String OUTRANKED =
      "Service information for your exact engine outranks this tool. So does a"
          + " qualified machinist. Follow local rules.";

  public BuildRecord {
    sections = List.copyOf(sections);
    plots = List.copyOf(plots);
    pictures = List.copyOf(pictures);
  }

  /** A record of tables alone. */
  public BuildRecord(
      String job,
      String engine,
      LocalDate begun,
      LocalDate asOf,
      List<RecordSection> sections,
      List<RecordPlot> plots,
      List<RecordPicture> pictures) {
    this(job, engine, begun, asOf, sections, plots, pictures, Optional.empty());
  }

  /** The record without pictures. */
  public static BuildRecord of(OpenJob job) {
    return of(job, RecordPictures.NONE);
  }

  /** The record with the job's photographs. */
  public static BuildRecord of(OpenJob job, Photos photos) {
    return of(job, new RecordPictures(job, photos));
  }

  private static BuildRecord of(OpenJob job, RecordPictures pictures) {
    EngineJob state = job.state();
    return new BuildRecord(
        state.name(),
        state.layout().title(),
        job.days().date(state.standing().get(0).time()),
        job.days().date(state.lastTouched()),
        List.of(
            new RecordSummary(job).section(),
            new RecordUnchecked(job).section(),
            RecordTables.onPurpose(state),
            new RecordChanges(job).section(),
            RecordTables.debris(job),
            RecordTables.visits(job),
            MoneyTable.of(job),
            RecordBuying.of(job),
            new RecordSeen(job).section(),
            new RecordParts(job).section(),
            RecordTables.measurements(job),
            new RecordSizes(state).section(),
            BagRecord.section(state),
            RingRecord.section(job),
            WeightRecord.section(job),
            BeforeRecord.section(job),
            CastingRecord.section(job),
            StartRecord.section(job),
            RunRecord.section(job),
            RecordTables.tools(job),
            TorqueRecord.section(job),
            TimingRecord.section(job),
            RecordTables.photos(job)),
        List.of(),
        pictures.all(),
        Optional.of(new RecordSheetsMaker(job, pictures).make()));
  }

  /** How many lines the record has as not checked. */
  public static int countUnchecked(OpenJob job) {
    return new RecordUnchecked(job).section().rows().size();
  }

  /** One of its tables; one without rows where there is none. */
  public RecordSection find(RecordTable table) {
    return sections.stream()
        .filter(section -> section.table() == table)
        .findFirst()
        .orElse(new RecordSection(table, List.of(), List.of(), "Nothing is left open."));
  }

  /** The record with plots, and a table of what they say. */
  public BuildRecord withPlots(List<RecordPlot> more) {
    List<RecordSection> tables = new ArrayList<>(sections);
    tables.add(
        new RecordSection(
            RecordTable.PLOTS,
            List.of("plot", "what it says"),
            more.stream()
                .map(plot -> new RecordSection.Row(List.of(plot.title(), plot.sentence()), false))
                .toList(),
            "There are no figures for a plot yet."));
    return new BuildRecord(job, engine, begun, asOf, tables, more, pictures, sheets);
  }
}
