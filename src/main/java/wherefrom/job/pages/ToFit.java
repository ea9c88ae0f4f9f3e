package wherefrom.job.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.engine.Section;
import wherefrom.job.EngineJob;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;

/**
 * An engine and what is still to fit into it.
 *
 * @param job its name
 * @param places those that are not filled, in the engine's order
 */
public record ToFit(String job, RecordEngine engine, List<Open> places) {
  public ToFit {
    places = List.copyOf(places);
  }

  /**
   * A place that is not filled.
   *
   * @param section the part of the engine that it belongs to
   * @param tag the typed code of the part that belongs there; empty where there is none
   * @param is where that part is
   * @param onBench whether it lies on the bench as one expects
   */
  public record Open(Place place, String section, String tag, String is, boolean onBench) {}

  /** The places that are neither filled nor left empty for a reason. */
  public static ToFit of(EngineJob job) {
    List<Open> places = new ArrayList<>();
    for (Place place : job.places()) {
      if (!job.isFilled(place)) {
        places.add(open(job, place));
      }
    }
    return new ToFit(job.name(), RecordEngine.of(job), places);
  }

  private static Open open(EngineJob job, Place place) {
    Optional<Part> part = job.findSeated(place).or(() -> job.findOwner(place));
    String section = Section.of(job.layout(), place.spot()).words();
    String is = part.map(one -> is(job, one)).orElse("no part");
    String tag = part.map(one -> one.code(job.engine()).typed()).orElse("");
    return new Open(place, section, tag, is, part.filter(one -> isOnBench(job, one)).isPresent());
  }

  private static boolean isOnBench(EngineJob job, Part part) {
    return job.whereabouts(part.item()) == Whereabouts.OUT && !part.fresh();
  }

  private static String is(EngineJob job, Part part) {
    Whereabouts where = job.whereabouts(part.item());
    boolean seated = where == Whereabouts.FITTED || where == Whereabouts.IN_ENGINE;
    String fresh = part.fresh() ? "new, " : "";
    return fresh + (seated ? "in, but something stands against it" : where.words());
  }
}
