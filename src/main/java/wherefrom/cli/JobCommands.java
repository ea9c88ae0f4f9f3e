package wherefrom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wherefrom.demo.DemoJob;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.Days;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.print.Unprintable;
import wherefrom.job.shelf.Resume;
import wherefrom.job.shelf.Shelf;
import wherefrom.job.tags.Tracking;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.quantity.UnitSystem;

/** Jobs begun, listed, looked over. */
final class JobCommands {

  private JobCommands() {}

  static List<Command> all() {
    return List.of(begin(), track(), list(), demo(), resume(), places());
  }

  private static Command begin() {
    return Command.of(
            "job new",
            "Starts a job.",
            Option.needed("--folder", "DIR", "the new job's own folder"),
            Option.needed("--name", "TEXT", "a name that you will recognize"),
            Option.maybe("--layout", "NAME", "one of those that wherefrom layouts lists"),
            Option.maybe("--layout-file", "F", "a layout of your own instead"),
            Option.maybe("--track", "KIND,…|recommended|all", "more kinds of part to track"),
            Option.maybe("--units", "inch|metric", "units; the settings' where not given"))
        .noting(
            "Kinds: " + kinds() + ".",
            "Pushrods, rockers, lifters and the shells of rods and mains are always tracked.")
        .does(JobCommands::begin);
  }

  private static String kinds() {
    return Arrays.stream(PartKind.values()).map(PartKind::key).collect(Collectors.joining(", "));
  }

  private static Status begin(Call call, Answer answer) throws BadInput, IOException {
    Path folder = call.wholePath("--folder");
    Path around = Optional.ofNullable(folder.getParent()).orElse(folder);
    Shelf shelf = call.services().shelves().apply(around);
    Shelf.NewJob begun =
        new Shelf.NewJob(call.get("--name"), layout(shelf, call), tracked(call), units(call));
    Unprintable.warning(call.services().printer(), List.of(begun.name())).ifPresent(answer::say);
    try (OpenJob job = shelf.createIn(folder, begun)) {
      EngineJob now = job.state();
      String layout = now.layout().name();
      return answer.only(
          new Row.Told(
              "Job \""
                  + Answer.cell(now.name())
                  + "\" begun in "
                  + job.folder()
                  + ".\n"
                  + now.parts().size()
                  + " parts to tag. Print their tags before the first bolt turns.",
              Json.object(
                  "folder", job.folder().toString(),
                  "name", now.name(),
                  "engine", now.engine(),
                  "layout", layout,
                  "parts", now.parts().size())));
    } catch (IllegalArgumentException e) {
      throw new BadInput(String.valueOf(e.getMessage()));
    }
  }

  private static Layout layout(Shelf shelf, Call call) throws BadInput, IOException {
    Optional<String> name = call.find("--layout");
    if (name.isPresent() == call.find("--layout-file").isPresent()) {
      throw call.wrong("Give either --layout or --layout-file.");
    }
    if (name.isEmpty()) {
      return call.services().layouts().read(call.path("--layout-file"));
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

  private static final Map<String, Set<PartKind>> GROUPS =
      Map.of("all", PartKind.all(), "recommended", PartKind.recommended());

  private static Set<PartKind> tracked(Call call) throws BadInput {
    Set<PartKind> kinds = EnumSet.copyOf(PartKind.alwaysOn());
    for (String key : call.listed("--track")) {
      kinds.addAll(GROUPS.containsKey(key) ? GROUPS.get(key) : Set.of(kind(key)));
    }
    return kinds;
  }

  private static PartKind kind(String key) throws BadInput {
    return PartKind.find(key)
        .orElseThrow(
            () ->
                new BadInput("There is no kind of part \"" + key + "\". Kinds: " + kinds() + "."));
  }

  private static UnitSystem units(Call call) throws BadInput {
    String units = call.text("--units").toLowerCase(Locale.ROOT);
    return switch (units) {
      case "" -> call.services().settings().load().units();
      case "inch" -> UnitSystem.INCH;
      case "metric", "mm" -> UnitSystem.METRIC;
      default -> throw call.wrong("--units: \"" + units + "\" is neither inch nor metric.");
    };
  }

  private record TrackedRow(int first, int parts, Row.Beside told) implements Row {
    @Override
    public String text() {
      return told.text();
    }
  }

  private static Command track() {
    return Command.of(
            "job track",
            "Tracks more kinds of part from now on.",
            Option.needed("--kinds", "KIND,…|all", "the kinds to track from now on"))
        .noting(
            "Their places get the next numbers. It cannot be taken back: tags may exist."
                + " Then: tags --new.")
        .tells(
            (bench, call) -> {
              Tracking.Answer came = new Tracking(bench.job()).track(toTrack(bench, call));
              if (came instanceof Tracking.Answer.Refused refused) {
                throw new BadInput(refused.sentence());
              }
              Tracking.Answer.Tracked tracked = (Tracking.Answer.Tracked) came;
              Row.Beside told = new Row.Beside(tracked.sentence());
              return new TrackedRow(tracked.first(), tracked.parts(), told);
            });
  }

  private static List<PartKind> toTrack(OpenedJob bench, Call call) throws BadInput {
    List<PartKind> kinds = new ArrayList<>();
    for (String key : call.listed("--kinds")) {
      kinds.addAll(
          key.equals("all") ? new Tracking(bench.job()).offered().keySet() : List.of(kind(key)));
    }
    return kinds;
  }

  private record JobRow(
      String folder, String name, String lastTouched, String doNext, String trouble)
      implements Row {
    static JobRow of(Shelf.Entry entry, Days days) {
      String touched = entry.resume().map(resume -> days.stamp(resume.lastTouched())).orElse("");
      String next = entry.resume().map(Resume::doNext).orElse("");
      return new JobRow(entry.folder().toString(), entry.name(), touched, next, entry.trouble());
    }

    @Override
    public String text() {
      return Answer.cells(folder, name, lastTouched, trouble.isEmpty() ? doNext : trouble);
    }
  }

  private static Command list() {
    return Command.of(
            "job list",
            "Lists the jobs of a jobs folder, the one last worked on first.",
            Option.maybe("--folder", "JOBS", "the jobs folder; the settings' if not given"))
        .noting("One line per job: folder, name, when it was last worked on, what to do next.")
        .does(
            (call, answer) -> {
              boolean given = call.find("--folder").isPresent();
              Path shop = given ? call.path("--folder") : call.services().settings().load().shop();
              Shelf shelf = call.services().shelves().apply(shop);
              if (shelf.needsFolder() && !Files.isDirectory(shop)) {
                throw new BadInput("There is no folder " + shop + ". Give the jobs folder.");
              }
              Days days = new Days(call.services().clock().getZone());
              shelf.list().stream().map(entry -> JobRow.of(entry, days)).forEach(answer::row);
              return Status.RIGHT;
            });
  }

  private static Command demo() {
    return Command.of(
            "demo",
            "Copies the invented demo job, part-way through, to a folder to try things on.",
            Option.needed("--folder", "DIR", "the copy's own folder, not there yet"))
        .does(
            (call, answer) -> {
              Path folder = call.wholePath("--folder");
              DemoJob.copyTo(folder);
              return answer.only(
                  new Row.Told(
                      "The demo job lies in "
                          + folder.toString()
                          + ". wherefrom resume --job says what to do next.",
                      Json.object("folder", folder.toString())));
            });
  }

  private static Command resume() {
    return Command.of("resume", "Says where a job was left, and what to do next.")
        .tells((bench, call) -> ResumeRow.of(bench));
  }

  private static Command places() {
    return Command.of("places", "Lists every place of a job.")
        .noting(
            "One line per place: the place card's digits, the tag's digits, the place,"
                + " its state.",
            "States: in; in, but; out; washing; at the machine shop; lost; fitted; fitted, but;"
                + " other part fitted; open; left empty.")
        .lists(
            (bench, call) ->
                bench.state().places().stream().map(place -> PlaceRow.of(bench, place)));
  }

  private record PlaceRow(String placeCard, String tag, String place, String key, String state)
      implements Row {
    static PlaceRow of(OpenedJob bench, Place place) {
      String card = bench.book().of(place.spot()).digits();
      String tag = bench.state().findOwner(place).map(bench::digits).orElse("");
      return new PlaceRow(
          card, tag, place.words(), place.key(), bench.state().state(place).words());
    }

    @Override
    public String text() {
      return Answer.cells(placeCard, tag, place, state);
    }
  }
}
