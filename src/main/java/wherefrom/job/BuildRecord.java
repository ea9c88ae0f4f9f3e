package wherefrom.job;

import java.time.Instant;
import java.util.List;

/**
 * The build record as data: what came out of where, what was found and decided, what went where.
 *
 * @param asOf the time of the last entry
 */
public record BuildRecord(
    String job, String engine, Instant begun, Instant asOf, List<RecordSection> sections) {
  /** What stands under every record. */
  public static final String OUTRANKED =
      "Published service information for the exact engine, and a qualified machinist, outrank this"
          + " tool. Follow local rules.";

  public BuildRecord {
    sections = List.copyOf(sections);
  }

  public static BuildRecord of(OpenJob job) {
    EngineJob state = job.state();
    return new BuildRecord(
        state.name(),
        state.layout().title(),
        state.standing().get(0).time(),
        state.lastTouched(),
        List.of(
            new RecordUnchecked(job).section(),
            new RecordParts(state).section(),
            RecordTables.onPurpose(state),
            RecordTables.measurements(state),
            RecordTables.changes(state),
            RecordTables.debris(job),
            RecordTables.visits(job),
            RecordTables.money(job),
            RecordTables.photos(state)));
  }
}
