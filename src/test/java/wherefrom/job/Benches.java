package wherefrom.job;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Set;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.PartOut;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.tags.JobNames;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.quantity.UnitSystem;

/** Jobs to test with: an invented V8. */
public final class Benches {
  public static final int ENGINE = 4_711_508;
  public static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-01T09:00:00Z"), ZoneOffset.UTC);
  public static final JobNames NO_NAMES = engine -> Optional.empty();

  private Benches() {}

  /** Another logbook of a job: what is known of its engine stays known. */
  public static OpenJob reopened(OpenJob job, Logbook logbook, Clock clock) {
    return new OpenJob(logbook, clock, job.state()::anew);
  }

  /** A V8 with the kinds that are always tracked, nothing taken out yet. */
  public static OpenJob fresh() {
    return fresh(PartKind.alwaysOn());
  }

  public static OpenJob fresh(Set<PartKind> kinds) {
    return fresh(new MemoryLogbook(), kinds);
  }

  private static OpenJob fresh(MemoryLogbook logbook, Set<PartKind> kinds) {
    logbook.append(
        CLOCK.instant(),
        JobOpened.of(
            "Launch V8",
            ENGINE,
            ReadyLayouts.find("v8-odd-even").orElseThrow(),
            kinds,
            UnitSystem.INCH));
    return new OpenJob(logbook, CLOCK);
  }

  /** The same with every part out on the bench. */
  public static OpenJob apart() {
    return apartOn(new MemoryLogbook());
  }

  /** The same over a logbook to be looked into. */
  public static OpenJob apartOn(MemoryLogbook logbook) {
    OpenJob job = fresh(logbook, PartKind.alwaysOn());
    job.state().parts().stream()
        .map(part -> part.part().item())
        .toList()
        .forEach(item -> job.record(new PartOut(item)));
    return job;
  }

  /** The part that belongs at a place, such as {@code pushrod@3EX}. */
  public static Part part(OpenJob job, String placeKey) {
    return job.state().findOwner(place(placeKey)).orElseThrow();
  }

  public static Place place(String key) {
    return Place.find(key).orElseThrow();
  }

  public static Spot spot(String key) {
    return Spots.find(key).orElseThrow();
  }

  /** The sixteen digits on a part's tag. */
  public static String tag(OpenJob job, String placeKey) {
    return new TagBook(job.state(), NO_NAMES).of(part(job, placeKey)).digits();
  }

  /** The sixteen digits on a place card. */
  public static String card(OpenJob job, String spotKey) {
    return new TagBook(job.state(), NO_NAMES).of(spot(spotKey)).digits();
  }

  /** What digits stand for in a job. */
  public static CodeLookup read(OpenJob job, String digits) {
    return new TagBook(job.state(), NO_NAMES).find(digits);
  }
}
