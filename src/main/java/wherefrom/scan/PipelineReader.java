package wherefrom.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Supplier;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.LiveReader;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.Sighting;
import wherefrom.job.reader.TagReader;
import wherefrom.parts.TagCode;
import wherefrom.scan.find.Threshold;
import wherefrom.scan.geometry.CameraModel;
import wherefrom.scan.geometry.LabelPattern;
import wherefrom.scan.grey.Pyramid;
import wherefrom.scan.match.IssuedSymbols;

/** Reads tags in stages; see the package description. */
public final class PipelineReader implements TagReader {
  /** Large pictures are searched from a half of their size on. */
  private static final List<Threshold> TRAY =
      List.of(new Threshold(1, 14, 3), new Threshold(2, 14, 2));

  private static final long LARGE = 5_000_000;

  /** Places that are tried again from other starts when they were not read. */
  static final int RETRIED = 3;

  /** Tags of other jobs that are asked for, the first: each costs time where nothing was read. */
  private static final int MOST_ELSEWHERE = 10_000;

  /** Candidates of each cut on a photograph of a whole tray. */
  private static final int TRAYFUL = 400;

  private final LabelPattern pattern;
  private volatile Others others = Others.of(List.of(), List.of());
  private volatile Issued last = new Issued(List.of(), new IssuedSymbols(List.of()));

  /** The symbols of the tags that were last asked for: they change once in a hundred readings. */
  private record Issued(List<TagCode> tags, IssuedSymbols symbols) {
    Issued {
      tags = List.copyOf(tags);
    }
  }

  /** The symbols of other jobs' tags that were last asked for. */
  private record Others(List<TagCode> tags, List<TagCode> open, IssuedSymbols symbols) {
    Others {
      tags = List.copyOf(tags);
      open = List.copyOf(open);
    }

    static Others of(Collection<TagCode> tags, Collection<TagCode> open) {
      return new Others(List.copyOf(tags), List.copyOf(open), new IssuedSymbols(tags, open));
    }

    boolean isOf(Collection<TagCode> asked, Collection<TagCode> issued) {
      return tags.equals(List.copyOf(asked)) && open.equals(List.copyOf(issued));
    }
  }

  public PipelineReader() {
    this(LabelPattern.printed());
  }

  PipelineReader(LabelPattern pattern) {
    this.pattern = pattern;
  }

  @Override
  public Reading read(GreyImage picture, Collection<TagCode> issued) {
    return read(picture, issued, List::of);
  }

  @Override
  public Reading read(
      GreyImage picture, Collection<TagCode> issued, Supplier<List<TagCode>> elsewhere) {
    CameraModel camera = CameraModel.of(picture.width(), picture.height());
    IssuedSymbols symbols = symbols(issued);
    PictureScan scan = new PictureScan(pattern, camera, symbols);
    List<Sighting> sightings = new ArrayList<>();
    Pyramid pyramid = Pyramid.of(picture);
    List<PoseReading> readings =
        isLarge(picture)
            ? scan.read(
                pyramid,
                scan.candidates(pyramid, TRAY, TRAYFUL),
                FirstLook.FOLLOWED,
                new Followed())
            : new FirstLook(scan).readings(pyramid);
    List<PoseReading> asked = new ArrayList<>(readings);
    asked.addAll(scan.retry(pyramid, readings, RETRIED));
    if (!isLarge(picture) && isNothing(readings)) {
      List<PoseReading> second =
          new SecondLook(pattern, camera, symbols).readings(picture, pyramid, readings);
      asked.addAll(second);
      second.stream().filter(reading -> reading.text().isPresent()).forEach(readings::add);
    }
    if (isNothing(readings)) {
      readings.addAll(ofOtherJobs(asked, issued, elsewhere.get()));
    }
    for (PoseReading reading : readings) {
      reading
          .text()
          .map(text -> Sightings.of(reading.pose(), text, camera))
          .ifPresent(sightings::add);
    }
    return new Reading(sightings, UnreadPlaces.list(picture, pattern, camera, readings, sightings));
  }

  private static boolean isNothing(List<PoseReading> readings) {
    return readings.stream().allMatch(reading -> reading.text().isEmpty());
  }

  private List<PoseReading> ofOtherJobs(
      List<PoseReading> asked, Collection<TagCode> issued, List<TagCode> elsewhere) {
    if (elsewhere.isEmpty()) {
      return List.of();
    }
    List<TagCode> asking = elsewhere.subList(0, Math.min(MOST_ELSEWHERE, elsewhere.size()));
    Others known = others;
    if (!known.isOf(asking, issued)) {
      known = Others.of(asking, issued);
      others = known;
    }
    return new OtherJobs(known.symbols()).readings(asked);
  }

  private IssuedSymbols symbols(Collection<TagCode> tags) {
    List<TagCode> listed = List.copyOf(tags);
    Issued known = last;
    if (!known.tags().equals(listed)) {
      known = new Issued(listed, new IssuedSymbols(listed));
      last = known;
    }
    return known.symbols();
  }

  private static boolean isLarge(GreyImage picture) {
    return (long) picture.width() * picture.height() > LARGE;
  }

  @Override
  public List<Sighting> listForeign(GreyImage picture) {
    return ForeignCodes.list(picture);
  }

  @Override
  public LiveReader live(Collection<TagCode> issued) {
    return new PipelineLive(pattern, symbols(issued));
  }
}
