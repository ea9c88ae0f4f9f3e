package wherefrom.job.pages;

import java.util.List;
import java.util.stream.Stream;

/**
 * The record by what it is about: the engine drawn, its cylinders, its mains, its sets.
 *
 * @param figures the counts of the first page
 * @param mains one column a main
 * @param others what belongs to no cylinder and no main: heads, block, shafts
 * @param events what happened to those and to the mains
 * @param sets what was measured of several things
 * @param pictures those that belong to no cylinder
 */
public record RecordSheets(
    RecordEngine engine,
    List<RecordFigure> figures,
    List<CylinderSheet> cylinders,
    RecordGrid mains,
    List<RecordColumn> others,
    List<RecordEvent> events,
    List<RecordSet> sets,
    List<RecordPicture> pictures) {
  public RecordSheets {
    figures = List.copyOf(figures);
    cylinders = List.copyOf(cylinders);
    others = List.copyOf(others);
    events = List.copyOf(events);
    sets = List.copyOf(sets);
    pictures = List.copyOf(pictures);
  }

  /** Those of the cylinders and those of none. */
  public List<RecordPicture> allPictures() {
    return Stream.concat(
            cylinders.stream().flatMap(sheet -> sheet.pictures().stream()), pictures.stream())
        .toList();
  }
}
