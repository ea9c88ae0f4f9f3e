package wherefrom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.OpenJob;
import wherefrom.job.ports.Equipment;
import wherefrom.job.print.Unprintable;
import wherefrom.job.shelf.Shelf;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;

/** Begins a job. */
final class JobNewCommand implements Command {
  private final Equipment equipment;

  JobNewCommand(Equipment equipment) {
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    return Usage.of(
            "job new",
            "",
            "Begins a job.",
            Option.needed("--folder", "DIR", "the new job's own folder"),
            Option.needed("--name", "TEXT", "a name that you will recognise"),
            Option.maybe("--layout", "NAME", "one of those that wherefrom layouts lists"),
            Option.maybe("--layout-file", "F", "a layout of your own instead"),
            Option.maybe("--track", "KIND,…|all", "more kinds of part to track"),
            Option.maybe("--units", "inch|metric", "units; the settings' where not given"))
        .noting(
            "Kinds: " + kinds() + ".",
            "Pushrods, rockers, lifters and the shells of rods and mains are always tracked.");
  }

  private static String kinds() {
    return Arrays.stream(PartKind.values()).map(PartKind::key).collect(Collectors.joining(", "));
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput, IOException {
    Path folder = call.path("--folder").toAbsolutePath().normalize();
    Path around = Optional.ofNullable(folder.getParent()).orElse(folder);
    Shelf shelf = equipment.shelves().apply(around);
    Shelf.NewJob begun =
        new Shelf.NewJob(call.get("--name"), layout(shelf, call), tracked(call), units(call));
    Unprintable.warning(equipment.printer(), List.of(begun.name())).ifPresent(answer::say);
    try (OpenJob job = shelf.createIn(folder, begun)) {
      int parts = job.state().parts().size();
      answer.only(
          Fields.of("folder", folder.toString())
              .and("name", job.state().name())
              .and("engine", job.state().engine())
              .and("layout", job.state().layout().name())
              .and("parts", parts),
          "Job \"" + Answer.cell(job.state().name()) + "\" begun in " + folder + ".",
          parts + " parts to tag. Print their tags before the first bolt turns.");
      return Status.RIGHT;
    } catch (IllegalArgumentException e) {
      throw new BadInput(String.valueOf(e.getMessage()));
    }
  }

  private Layout layout(Shelf shelf, Call call) throws BadInput, IOException {
    Optional<String> name = call.find("--layout");
    if (name.isPresent() == call.find("--layout-file").isPresent()) {
      throw call.wrong("Give either --layout or --layout-file.");
    }
    if (name.isEmpty()) {
      return equipment.layouts().read(call.path("--layout-file"));
    }
    return ReadyLayouts.find(name.get())
        .or(() -> own(shelf, name.get()))
        .orElseThrow(
            () ->
                new BadInput(
                    "There is no layout \"" + name.get() + "\". wherefrom layouts lists them."));
  }

  private static Optional<Layout> own(Shelf shelf, String name) {
    return shelf.listLayouts().stream().filter(layout -> layout.name().equals(name)).findFirst();
  }

  private static Set<PartKind> tracked(Call call) throws BadInput {
    Set<PartKind> kinds = EnumSet.copyOf(PartKind.alwaysOn());
    for (String key : call.listed("--track")) {
      if (key.equals("all")) {
        kinds.addAll(PartKind.all());
      } else {
        kinds.add(kind(key));
      }
    }
    return kinds;
  }

  /** The kind with this key; where there is none, which there are. */
  static PartKind kind(String key) throws BadInput {
    return PartKind.find(key)
        .orElseThrow(
            () ->
                new BadInput("There is no kind of part \"" + key + "\". Kinds: " + kinds() + "."));
  }

  private UnitSystem units(Call call) throws BadInput {
    String units = call.find("--units").orElse("").toLowerCase(Locale.ROOT);
    return switch (units) {
      case "" -> equipment.settings().load().units();
      case "inch" -> UnitSystem.INCH;
      case "metric", "mm" -> UnitSystem.METRIC;
      default -> throw call.wrong("--units: \"" + units + "\" is neither inch nor metric.");
    };
  }
}
