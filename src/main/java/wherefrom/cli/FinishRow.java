package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import wherefrom.engine.Section;
import wherefrom.job.Caution;
import wherefrom.job.puttogether.FirstStart;
import wherefrom.job.puttogether.ToFit;
import wherefrom.parts.Place;

/**
 * A section that was to be finished.
 *
 * @param firstStart what stands before the first start; only with the last section
 */
record FinishRow(
    String section,
    boolean finished,
    List<String> toFit,
    List<String> fittedBut,
    List<FirstStart.Point> firstStart,
    Row.Beside words)
    implements Row {

  /** Finishes a section, if it can be. */
  static FinishRow finish(OpenedJob bench, String key) throws BadInput {
    ToFit all = new ToFit(bench.job());
    Section section = section(all, key);
    List<String> open = all.places(section).stream().map(Place::words).toList();
    List<String> against =
        all.fittedBut(section).stream()
            .map(one -> one.place().words() + ": " + one.sentence())
            .toList();
    boolean finished = all.finish(section);
    boolean last = finished && new FirstStart(bench.job()).isDue();
    List<FirstStart.Point> points = last ? pointsBeforeStart(bench) : List.of();
    Row.Beside words = new Row.Beside(section.words());
    return new FinishRow(section.key(), finished, open, against, points, words);
  }

  private static Section section(ToFit all, String key) throws BadInput {
    List<Section> sections = all.sections();
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
  private static List<FirstStart.Point> pointsBeforeStart(OpenedJob bench) {
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
    lines.add(finished ? "Finished: " + words.text() + "." : notFinished());
    lines.add(firstStart.isEmpty() ? "" : "Before the first start:");
    firstStart.forEach(
        point -> lines.add(Answer.cells(point.heading(), point.words(), point.source())));
    return Row.lines(lines);
  }

  private String notFinished() {
    return "Not finished: "
        + words.text()
        + "."
        + (toFit.isEmpty() ? "" : " To fit: " + String.join("; ", toFit) + ".")
        + (fittedBut.isEmpty() ? "" : " Fitted, but: " + String.join(" ", fittedBut));
  }
}
