package wherefrom.ui.sample;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Set;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.PlaceState;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.PartOut;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.tags.JobNames;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.Action;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.quantity.UnitSystem;

/** An invented V8 job for tests of the screens, and the codes of its tags. */
public final class SampleJob {
  public static final int ENGINE = 4711;
  public static final int OTHER_ENGINE = 815;
  public static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-05-04T09:30:00Z"), ZoneOffset.UTC);
  public static final JobNames NAMES =
      engine -> engine == OTHER_ENGINE ? Optional.of("Gray six") : Optional.empty();

  public final PaperLogbook logbook = new PaperLogbook();
  public final OpenJob job;

  private SampleJob(Layout layout, Set<PartKind> kinds) {
    logbook.append(
        CLOCK.instant(), JobOpened.of("Launch V8", ENGINE, layout, kinds, UnitSystem.INCH));
    job = new OpenJob(logbook, CLOCK);
  }

  /** A V8 with the kinds that are always tracked, all in the engine. */
  public static SampleJob whole() {
    return new SampleJob(ReadyLayouts.find("v8-odd-even").orElseThrow(), PartKind.alwaysOn());
  }

  /** An engine of another layout, all in the engine. */
  public static SampleJob whole(String layout, Set<PartKind> kinds) {
    return new SampleJob(ReadyLayouts.find(layout).orElseThrow(), kinds);
  }

  /** An engine of a layout that a person has edited, all in the engine. */
  public static SampleJob whole(Layout layout, Set<PartKind> kinds) {
    return new SampleJob(layout, kinds);
  }

  /** The same V8 with everything on the bench. */
  public static SampleJob apart() {
    SampleJob sample = whole();
    sample.job.state().parts().stream()
        .map(part -> part.part().item())
        .toList()
        .forEach(item -> sample.job.record(new PartOut(item)));
    return sample;
  }

  public Part part(String placeKey) {
    return job.state().findOwner(Place.find(placeKey).orElseThrow()).orElseThrow();
  }

  /** What is so at a place, by its key. */
  public PlaceState state(String placeKey) {
    return job.state().state(Place.find(placeKey).orElseThrow());
  }

  public PartRecord record(String placeKey) {
    return job.state().getPart(part(placeKey).item());
  }

  public Spot spot(String key) {
    return Spots.find(key).orElseThrow();
  }

  /** The digits on a part's tag, by its home's key such as {@code pushrod@3EX}. */
  public String tag(String placeKey) {
    return book().of(part(placeKey)).digits();
  }

  /** The digits on a place card, by the spot's key such as {@code 3EX}. */
  public String card(String spotKey) {
    return book().of(spot(spotKey)).digits();
  }

  public String action(Action action) {
    return action.code().digits();
  }

  /** What digits stand for in the job. */
  public CodeLookup read(String digits) {
    return book().find(digits);
  }

  private TagBook book() {
    return new TagBook(job.state(), NAMES);
  }
}
