package wherefrom.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import wherefrom.engine.Arrangement;
import wherefrom.engine.Bank;
import wherefrom.engine.Layout;
import wherefrom.engine.LifterType;
import wherefrom.engine.RockerMount;
import wherefrom.engine.Spot;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.PhotoAdded;
import wherefrom.job.entry.TagsPrinted;
import wherefrom.job.handling.Handling;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.tags.JobNames;
import wherefrom.job.tags.TagBook;
import wherefrom.job.takeapart.TakeApart;
import wherefrom.logbook.LogbookFile;
import wherefrom.logbook.PhotoFiles;
import wherefrom.logbook.Written;
import wherefrom.parts.Action;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.TagType;
import wherefrom.quantity.UnitSystem;

/**
 * Makes {@code demo-data}: an invented engine, out of a small wooden launch, part-way through its
 * rebuild. Give the folder, which must be empty. The demo is invented data and says nothing of any
 * real engine.
 */
public final class DemoMaker {
  private static final List<String> FITTED_RODS = List.of("R1", "R2", "R3", "R6");
  private static final JobNames NO_OTHERS = engine -> Optional.empty();

  private final Path folder;
  private final BenchClock clock = new BenchClock(Instant.parse("2026-03-14T09:00:00Z"));
  private final PhotoFiles photos = new PhotoFiles();
  private final Path sketches;
  private final OpenJob job;
  private final TagBook book;
  private final DemoLooks looks;
  private final DemoReadings readings;
  private final DemoPlans plans;

  private DemoMaker(Path folder, Path sketches) {
    this.folder = folder;
    this.sketches = sketches;
    Set<PartKind> kinds = EnumSet.copyOf(PartKind.alwaysOn());
    kinds.add(PartKind.ROD_CAP);
    kinds.add(PartKind.MAIN_CAP);
    kinds.add(PartKind.SPRING);
    LogbookFile logbook = LogbookFile.create(folder);
    Written.append(
        logbook,
        clock.instant(),
        JobOpened.of("Demo: V8 of the launch", DemoJob.ENGINE, layout(), kinds, UnitSystem.INCH));
    this.job = new OpenJob(logbook, clock);
    this.book = new TagBook(job.state(), NO_OTHERS);
    this.looks = new DemoLooks(job);
    this.readings = new DemoReadings(job);
    this.plans = new DemoPlans(job);
  }

  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]).toAbsolutePath();
    Path sketches = Files.createTempDirectory("sketches");
    new DemoMaker(folder, sketches).make();
    index(folder);
  }

  /** Two banks of four as in many engines; the firing order is made up. */
  private static Layout layout() {
    Bank left = new Bank("left", List.of(1, 3, 5, 7), "EIIEEIIE");
    Bank right = new Bank("right", List.of(2, 4, 6, 8), "EIIEEIIE");
    return new Layout(
        "launch-v8",
        "V8 of a launch, invented",
        Arrangement.V,
        90,
        List.of(left, right),
        "left",
        List.of(1, 5, 7, 2, 6, 8, 4, 3),
        5,
        3,
        true,
        4,
        5,
        LifterType.FLAT,
        RockerMount.INDIVIDUAL);
  }

  private void make() throws IOException {
    try (job) {
      printTags();
      takeApart();
      plans.debris();
      looks.dirty();
      clock.pass(Duration.ofDays(6));
      wash();
      looks.clean();
      readings.tools();
      readings.valvetrain();
      readings.bottomEnd();
      plans.toTheShop();
      clock.pass(Duration.ofDays(1));
      plans.plans();
      plans.money();
      plans.decisions();
      clock.pass(Duration.ofDays(22));
      plans.crankBack();
      plans.checks();
      bottomEnd();
    }
  }

  private void printTags() throws IOException {
    job.record(
        new NoteAdded(
            0,
            "Small wooden launch, V8. Laid up for years, turned over by hand. One valve hardly lifted."));
    String photo = photos.add(folder, Sketch.laidUp(sketches));
    job.record(new PhotoAdded(0, photo, "as it was found"));
    List<Integer> items = job.state().parts().stream().map(part -> part.part().item()).toList();
    job.record(new TagsPrinted(TagType.PART, items, "a4-3x8-63.5x33.9"));
  }

  private void takeApart() throws IOException {
    TakeApart apart = new TakeApart(job);
    for (PartRecord part : TakeApart.listInside(job.state())) {
      apart.out(part);
    }
    Handling handling = new Handling(job);
    handling.note(part("pushrod@3EX").item(), "Upper tip worn dark. Look at its rocker too.");
    String worn = photos.add(folder, Sketch.wornPushrod(sketches));
    handling.photo(part("pushrod@3EX").item(), worn, "upper tip");
    String pitted = photos.add(folder, Sketch.pittedLifter(sketches));
    handling.photo(part("lifter@6IN").item(), pitted, "face");
    handling.lost(part("pushrod@8EX").item(), "rolled under the bench, not found yet");
  }

  private void wash() {
    Handling handling = new Handling(job);
    for (String place : List.of("rocker@1IN", "rocker@1EX", "rocker@2IN", "rocker@2EX")) {
      handling.offForWashing(part(place).item(), 2);
    }
    handling.backFromWashing(part("rocker@1IN").item());
    handling.backFromWashing(part("rocker@1EX").item());
  }

  /** Mains and four rods are back; then a shell is about to go into another rod. */
  private void bottomEnd() {
    PutTogether together = new PutTogether(job);
    fit(together, PartKind.MAIN_SHELL, place -> true);
    fit(together, PartKind.MAIN_CAP, place -> true);
    for (String rod : FITTED_RODS) {
      fit(together, PartKind.ROD_SHELL, place -> place.spot().key().startsWith(rod));
      fit(together, PartKind.ROD_CAP, place -> place.spot().key().startsWith(rod));
    }
    fit(together, Place.find("rod-shell@R7U").orElseThrow(), spot("rod-shell@R8U"));
    together.act(Action.UNDO);
    fit(together, Place.find("rod-shell@R7U").orElseThrow(), spot("rod-shell@R7U"));
    fit(together, Place.find("rod-shell@R8L").orElseThrow(), spot("rod-shell@R7L"));
  }

  /** No cap goes on before its shells are in. */
  private void fit(PutTogether together, PartKind kind, Predicate<Place> which) {
    List.copyOf(job.state().places()).stream()
        .filter(place -> place.kind() == kind)
        .filter(which)
        .forEach(place -> fit(together, place, place.spot()));
  }

  private void fit(PutTogether together, Place home, Spot spot) {
    together.scan(book.find(book.of(part(home.key()))));
    together.scan(book.find(book.of(spot)));
  }

  private Part part(String place) {
    return job.state().findOwner(Place.find(place).orElseThrow()).orElseThrow();
  }

  private static Spot spot(String place) {
    return Place.find(place).orElseThrow().spot();
  }

  /** The list of files by which the program copies the demo from its own jar. */
  private static void index(Path folder) throws IOException {
    List<String> lines = new ArrayList<>();
    try (Stream<Path> files = Files.walk(folder)) {
      files
          .filter(Files::isRegularFile)
          .map(file -> folder.relativize(file).toString().replace('\\', '/'))
          .filter(file -> !file.endsWith(".lock") && !file.startsWith("."))
          .sorted()
          .forEach(lines::add);
    }
    Files.write(folder.resolve("files.txt"), lines);
  }
}
