package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import wherefrom.engine.Section;
import wherefrom.job.Caution;
import wherefrom.job.ports.Equipment;
import wherefrom.job.puttogether.FirstStart;
import wherefrom.job.puttogether.StillMissing;
import wherefrom.parts.Place;

/** Closes a section of the engine. */
final class CloseCommand implements Command {
  private final Equipment equipment;

  CloseCommand(Equipment equipment) {
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    return Usage.of(
            "close",
            "SECTION",
            "Closes a section once each of its places is filled or left empty for a reason.",
            Option.JOB)
        .noting(
            "Sections: valvetrain, or valvetrain-left and valvetrain-right; rods, mains, cam.",
            "With the last one closed: cautions and open points before the first start.");
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput {
    if (call.operands().size() != 1) {
      throw call.wrong("Give one section.");
    }
    try (Bench bench = Bench.open(equipment, call, answer)) {
      StillMissing missing = new StillMissing(bench.job());
      Section section = section(missing, call.operands().get(0));
      List<String> open = missing.places(section).stream().map(Place::words).toList();
      List<String> against =
          missing.fittedBut(section).stream()
              .map(one -> one.place().words() + ": " + one.sentence())
              .toList();
      boolean closed = missing.close(section);
      List<String> lines = new ArrayList<>();
      lines.add(
          closed
              ? "Closed: " + section.words() + "."
              : "Not closed: "
                  + section.words()
                  + "."
                  + (open.isEmpty() ? "" : " Still missing: " + String.join("; ", open) + ".")
                  + (against.isEmpty() ? "" : " Fitted, but: " + String.join(" ", against)));
      boolean last = closed && new FirstStart(bench.job()).isDue();
      List<FirstStart.Point> points = last ? pointsBeforeStart(bench) : List.of();
      if (last) {
        lines.add("Before the first start:");
      }
      points.forEach(point -> lines.add(line(point)));
      answer.only(
          Fields.of("section", section.key())
              .and("closed", closed)
              .and("missing", open)
              .and("fittedBut", against)
              .and("firstStart", points.stream().map(CloseCommand::fields).toList()),
          lines);
      return Status.stoppedIf(!closed);
    }
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

  private static String line(FirstStart.Point point) {
    return Answer.cells(point.heading(), point.words(), point.source());
  }

  private static Map<String, Object> fields(FirstStart.Point point) {
    return Fields.of("heading", point.heading())
        .and("words", point.words())
        .and("source", point.source())
        .and("open", point.open())
        .all();
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
}
