package wherefrom.cli;

import java.util.List;
import java.util.stream.Collectors;
import wherefrom.engine.Section;
import wherefrom.job.Equipment;
import wherefrom.job.StillMissing;
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
        .noting("Sections: valvetrain, or valvetrain-left and valvetrain-right; rods, mains, cam.");
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
      boolean closed = missing.close(section);
      answer.only(
          Fields.of("section", section.key()).and("closed", closed).and("missing", open),
          closed
              ? "Closed: " + section.words() + "."
              : "Not closed: "
                  + section.words()
                  + ". Still missing: "
                  + String.join("; ", open)
                  + ".");
      return Status.stoppedIf(!closed);
    }
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
