package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import wherefrom.engine.Section;
import wherefrom.job.Caution;
import wherefrom.job.puttogether.FirstStart;
import wherefrom.job.puttogether.StillMissing;
import wherefrom.parts.Place;

/**
 * A section that was to be closed.
 *
 * @param firstStart what stands before the first start; only with the last section
 */
record CloseRow(
    String section,
    boolean closed,
    List<String> missing,
    List<String> fittedBut,
    List<FirstStart.Point> firstStart,
    Row.Beside words)
    implements Row {

  /** Closes a section, if it can be closed. */
  static CloseRow close(Bench bench, String key) throws BadInput {
    StillMissing missing = new StillMissing(bench.job());
    Section section = section(missing, key);
    List<String> open = missing.places(section).stream().map(Place::words).toList();
    List<String> against =
        missing.fittedBut(section).stream()
            .map(one -> one.place().words() + ": " + one.sentence())
            .toList();
    boolean closed = missing.close(section);
    boolean last = closed && new FirstStart(bench.job()).isDue();
    List<FirstStart.Point> points = last ? pointsBeforeStart(bench) : List.of();
    Row.Beside words = new Row.Beside(section.words());
    return new CloseRow(section.key(), closed, open, against, points, words);
  }

  private static Section section(StillMissing missing, String key) throws BadInput {
    List<Section> sections = missing.sections();
    String keys = sections.stream().map(Section::key).collect(Collectors.joining(", "));
    return sections.stream()
        .filter(section -> section.key().equals(key))
        .findFirst()
        .orElseThrow(
            () ->
                new BadInput("There is no section \"" + key + "\" here. Sections: " + keys + "."));
  }

  /**
   * The cautions first, as in the window; then what the job shows as open, then what is always
   * done.
   */
  private static List<FirstStart.Point> pointsBeforeStart(Bench bench) {
    List<FirstStart.Point> points = new ArrayList<>();
    for (Caution caution : Caution.atFirstStart()) {
      points.add(new FirstStart.Point("Caution", caution.sentence(), caution.source(), false));
    }
    points.addAll(new FirstStart(bench.job()).points());
    return points;
  }

  @Override
  public String text() {
    List<String> lines = new ArrayList<>();
    lines.add(closed ? "Closed: " + words.text() + "." : notClosed());
    lines.add(firstStart.isEmpty() ? "" : "Before the first start:");
    firstStart.forEach(
        point -> lines.add(Answer.cells(point.heading(), point.words(), point.source())));
    return Row.lines(lines);
  }

  private String notClosed() {
    return "Not closed: "
        + words.text()
        + "."
        + (missing.isEmpty() ? "" : " Still missing: " + String.join("; ", missing) + ".")
        + (fittedBut.isEmpty() ? "" : " Fitted, but: " + String.join(" ", fittedBut));
  }
}
