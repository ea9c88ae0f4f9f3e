package wherefrom.job;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Set;
import wherefrom.engine.Layout;
import wherefrom.engine.LifterType;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.RockerMount;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.job.entry.DecisionMade;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartSort;
import wherefrom.job.puttogether.Fitting;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.quantity.UnitSystem;
import wherefrom.rules.Verdict;

/** An engine job kept in memory, everything tracked and everything out. */
public final class BenchJob {
  public final OpenJob job;

  private BenchJob(Layout layout) {
    this(layout, PartKind.all());
  }

  private BenchJob(Layout layout, Set<PartKind> kinds) {
    job = whole(layout, kinds);
    job.state().parts().stream()
        .map(part -> part.part().item())
        .toList()
        .forEach(item -> job.record(new PartOut(item)));
  }

  /** A job with nothing out yet. */
  public static OpenJob whole(Layout layout, Set<PartKind> kinds) {
    MemoryLogbook logbook = new MemoryLogbook();
    logbook.append(
        Instant.EPOCH, JobOpened.of("Test engine", 1234567, layout, kinds, UnitSystem.INCH));
    return new OpenJob(logbook, Clock.fixed(Instant.parse("2026-01-02T03:04:05Z"), ZoneOffset.UTC));
  }

  public static BenchJob v8() {
    return new BenchJob(ReadyLayouts.find("v8-odd-even").orElseThrow());
  }

  public static BenchJob v6() {
    return new BenchJob(ReadyLayouts.find("v6-odd-even").orElseThrow());
  }

  public static BenchJob inline4() {
    return new BenchJob(ReadyLayouts.find("inline-4").orElseThrow());
  }

  /** A V8 of which only the kinds that are always on are tracked. */
  public static BenchJob fewKinds() {
    return new BenchJob(ReadyLayouts.find("v8-odd-even").orElseThrow(), PartKind.alwaysOn());
  }

  static BenchJob rollerV8() {
    return new BenchJob(v8(LifterType.ROLLER, RockerMount.INDIVIDUAL));
  }

  static BenchJob shaftV8() {
    return new BenchJob(v8(LifterType.FLAT, RockerMount.SHAFT));
  }

  private static Layout v8(LifterType lifters, RockerMount rockers) {
    Layout flat = ReadyLayouts.find("v8-odd-even").orElseThrow();
    return new Layout(
        "other",
        "Other V8",
        flat.arrangement(),
        flat.vee(),
        flat.banks(),
        flat.leadingBank(),
        flat.firingOrder(),
        flat.mains(),
        flat.thrustMain(),
        flat.mainCaps(),
        flat.rodJournals(),
        flat.camBearings(),
        lifters,
        rockers);
  }

  /** The part that owns a place, such as {@code lifter@3EX}. */
  public Part part(String place) {
    return job.state().findOwner(Place.find(place).orElseThrow()).orElseThrow();
  }

  public int item(String place) {
    return part(place).item();
  }

  /** Judges the part that owns a place, at that place. */
  public Verdict verdict(String place) {
    Part part = part(place);
    return new Fitting(job).judge(part, part.home().spot(), false);
  }

  public String word(String place) {
    return verdict(place).word();
  }

  public void look(String place, String check, Look look) {
    job.record(new LookRecorded(item(place), check, look, ""));
  }

  public void decide(String place, Decision decision) {
    job.record(new DecisionMade(item(place), decision, "test"));
  }

  /** Sees that every lifter's foot is domed, and decides to use everything again. */
  public BenchJob reuseAll() {
    job.state().parts().stream()
        .map(PartRecord::part)
        .filter(part -> part.kind() == PartKind.LIFTER)
        .map(Part::item)
        .toList()
        .forEach(item -> job.record(new LookRecorded(item, "lifter-foot", Look.PASS, "")));
    job.state().parts().stream()
        .map(part -> part.part().item())
        .toList()
        .forEach(item -> job.record(new DecisionMade(item, Decision.REUSE, "test")));
    return this;
  }

  /** Replaces the part that owns a place by a new one. */
  public Part replace(String place) {
    job.record(
        new PartReplaced(item(place), job.nextItem(), "test", Optional.empty(), PartSort.SAME));
    return part(place);
  }

  public void record(JobEntry entry) {
    job.record(entry);
  }
}
