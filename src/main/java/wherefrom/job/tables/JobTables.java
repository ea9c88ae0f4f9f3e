package wherefrom.job.tables;

import java.util.List;
import wherefrom.job.OpenJob;
import wherefrom.job.pages.TidyTable;

/** Every table of a job. */
public final class JobTables {
  /** Their names, in this order; they never change. */
  public static final List<String> NAMES =
      List.of(
          "parts",
          "readings",
          "samples",
          "findings",
          "decisions",
          "events",
          "costs",
          "buying",
          "offers",
          "shop",
          "returns",
          "torque",
          "timing",
          "rings",
          "signs",
          "bags",
          "big-parts",
          "castings",
          "start",
          "run-in",
          "run-in-readings",
          "service",
          "usage");

  private JobTables() {}

  /** In a fixed order; a table without rows is there with its columns. */
  public static List<TidyTable> of(OpenJob job) {
    return List.of(
        PartTables.parts(job.state()),
        ReadingTables.results(job.state()),
        ReadingTables.samples(job),
        FindingTables.findings(job.state()),
        PartTables.decisions(job.state()),
        FindingTables.events(job.state()),
        WorkTables.costs(job),
        BuyingTables.buying(job),
        BuyingTables.offers(job),
        WorkTables.shop(job),
        WorkTables.returns(job.state()),
        TorqueTables.torque(job.state()),
        TorqueTables.timing(job),
        RingTables.rings(job),
        BeforeTables.signs(job),
        BagTables.bags(job.state()),
        BagTables.bigParts(job.state()),
        CastingTables.castings(job),
        StartTables.start(job),
        RunTables.stretches(job),
        RunTables.gauges(job),
        RunTables.service(job),
        RunTables.usage(job));
  }
}
