package wherefrom.job.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.engine.Section;
import wherefrom.job.EngineJob;
import wherefrom.job.bags.AlwaysNew;
import wherefrom.job.bags.Bag;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.parts.Whereabouts;

/**
 * An engine and what is still to fit into it.
 *
 * @param job its name
 * @param places those that are not filled, in the engine's order
 * @param beside what goes on beside the tagged parts
 */
public record ToFitSheet(String job, RecordEngine engine, List<Open> places, List<Beside> beside) {
  public ToFitSheet {
    places = List.copyOf(places);
    beside = List.copyOf(beside);
  }

  /** Without bags and big parts. */
  public ToFitSheet(String job, RecordEngine engine, List<Open> places) {
    this(job, engine, places, List.of());
  }

  /**
   * What goes on beside the tagged parts: a big part, a bag, a kind of gasket.
   *
   * @param group under which it is listed
   * @param tag its typed code; empty where it has none
   * @param is where it is, or how many are wanted
   */
  public record Beside(String group, String what, String tag, String is) {}

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
  public static ToFitSheet of(EngineJob job) {
    List<Open> places = new ArrayList<>();
    for (Place place : job.places()) {
      if (!job.isFilled(place)) {
        places.add(open(job, place));
      }
    }
    return new ToFitSheet(job.name(), RecordEngine.of(job), places, beside(job));
  }

  private static List<Beside> beside(EngineJob job) {
    BagBook book = BagBook.of(job);
    List<Beside> all = new ArrayList<>();
    for (BigPartRecord part : book.bigPartsOff()) {
      String tag = part.part().code(job.engine()).typed();
      all.add(new Beside("Big parts", part.words(), tag, unusual(part.where())));
    }
    for (Bag bag : book.openBags()) {
      String tag = new TagCode(TagType.BAG, job.engine(), bag.number(), 1).typed();
      String what = bag.filled().pieces() + " " + bag.filled().what();
      all.add(new Beside("Bags", what, tag, unusual(bag.where())));
    }
    for (AlwaysNew line : AlwaysNew.of(book)) {
      all.add(new Beside("Always new", line.pieces() + " " + line.what(), "", ""));
    }
    return all;
  }

  private static String unusual(Whereabouts where) {
    return where == Whereabouts.OUT ? "" : where.words();
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
