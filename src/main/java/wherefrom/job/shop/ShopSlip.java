package wherefrom.job.shop;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wherefrom.engine.Layout;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.PlaceState;
import wherefrom.job.entry.ShopLineAdded;
import wherefrom.job.pages.RecordEngine;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.consequence.ShopWork;

/**
 * The paper that goes along with what goes to the machine shop.
 *
 * @param job its name
 * @param day when it went
 * @param engine drawn with the places of what goes
 * @param worked the surfaces that are worked on, of what carries no tag
 * @param rows what goes
 */
public record ShopSlip(
    String job,
    ShopVisit visit,
    LocalDate day,
    RecordEngine engine,
    List<Subject.AFeature> worked,
    List<Row> rows) {
  public ShopSlip {
    worked = List.copyOf(worked);
    rows = List.copyOf(rows);
  }

  /**
   * One thing that goes.
   *
   * @param kind of a tagged part
   * @param tag the part's typed code; empty where it has none
   * @param size the size wanted back with its tolerance; may be empty
   * @param surfaces each of which is measured on return, such as {@code B1}; empty where the work
   *     has none of its own
   */
  public record Row(
      int pieces,
      String what,
      Optional<PartKind> kind,
      String tag,
      String wanted,
      String size,
      List<String> surfaces) {
    public Row {
      surfaces = List.copyOf(surfaces);
    }
  }

  public static ShopSlip of(OpenJob open, ShopVisit visit) {
    EngineJob job = open.state();
    LocalDate day = open.days().date(visit.sent());
    List<Row> rows = new ArrayList<>();
    for (ShopVisit.Sent sent : visit.parts()) {
      Part part = sent.part();
      String tag = part.code(job.engine()).typed();
      rows.add(
          new Row(
              part.pieces(),
              part.words(),
              Optional.of(part.kind()),
              tag,
              sent.wanted(),
              "",
              List.of()));
    }
    for (ShopVisit.Line line : visit.lines()) {
      ShopLineAdded asked = line.line();
      List<String> surfaces = surfaces(job.layout(), asked);
      String size = line.target().orElse("");
      rows.add(
          new Row(
              asked.count(), asked.what(), Optional.empty(), "", asked.wanted(), size, surfaces));
    }
    return new ShopSlip(
        job.name(), visit, day, drawn(job, visit), worked(job.layout(), visit), rows);
  }

  private static RecordEngine drawn(EngineJob job, ShopVisit visit) {
    Set<Place> places =
        visit.parts().stream().map(sent -> sent.part().home()).collect(Collectors.toSet());
    return RecordEngine.of(job).showing(places, PlaceState.AT_SHOP);
  }

  private static List<Subject.AFeature> worked(Layout layout, ShopVisit visit) {
    List<Subject.AFeature> worked = new ArrayList<>();
    for (ShopVisit.Line line : visit.lines()) {
      feature(line.line().work())
          .ifPresent(
              feature ->
                  surfaces(layout, line.line()).stream()
                      .filter(feature.where(layout)::contains)
                      .map(where -> new Subject.AFeature(feature, where))
                      .forEach(worked::add));
    }
    return worked;
  }

  /** Those that are named, else all that the work is done at. */
  private static List<String> surfaces(Layout layout, ShopLineAdded line) {
    return line.where().isEmpty()
        ? feature(line.work()).map(feature -> feature.where(layout)).orElse(List.of())
        : line.where();
  }

  private static Optional<Feature> feature(ShopWork work) {
    return switch (work) {
      case BORE, HONE -> Optional.of(Feature.BORE);
      case GRIND_RODS -> Optional.of(Feature.ROD_JOURNAL);
      case GRIND_MAINS, POLISH -> Optional.of(Feature.MAIN_JOURNAL);
      case RESIZE -> Optional.of(Feature.ROD_HOUSING);
      case LINE_HONE -> Optional.of(Feature.MAIN_HOUSING);
      case MILL_HEAD -> Optional.of(Feature.HEAD);
      case MILL_DECK -> Optional.of(Feature.DECK);
      case VALVES, CRACK_TEST, STUD, OTHER -> Optional.empty();
    };
  }
}
