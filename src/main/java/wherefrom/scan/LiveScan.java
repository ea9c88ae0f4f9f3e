package wherefrom.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Sighting;
import wherefrom.job.reader.Unread;
import wherefrom.scan.find.Threshold;
import wherefrom.scan.geometry.CameraModel;
import wherefrom.scan.geometry.LabelPattern;
import wherefrom.scan.geometry.Pose;
import wherefrom.scan.grey.Pyramid;
import wherefrom.scan.grid.SoftGrid;
import wherefrom.scan.match.IssuedSymbols;

/** The tags followed on a live picture of one size. */
final class LiveScan {
  private static final List<Threshold> CUTS =
      List.of(
          new Threshold(1, 14, 3),
          new Threshold(0, 14, 4, 0, 2),
          new Threshold(2, 12, 2),
          new Threshold(0, 14, 4, 1, 2),
          new Threshold(1, 30, 5));
  private static final int FOLLOWED = 3;
  private static final int FOLLOWED_WHOLE = 2;
  private static final int MOST_TRACKS = 4;
  private static final int FORGET = 4;

  /** Fit of the pattern below which a place is not followed. */
  private static final double FOLLOW = 0.35;

  private final LabelPattern pattern;
  private final CameraModel camera;
  private final PictureScan pictures;
  private final RetryPlaces doubts = new RetryPlaces();
  private int searches;
  private List<Track> tracks = new ArrayList<>();
  private Optional<Unread.Cause> hint = Optional.empty();

  LiveScan(LabelPattern pattern, CameraModel camera, IssuedSymbols issued) {
    this.pattern = pattern;
    this.camera = camera;
    pictures = new PictureScan(pattern, camera, issued);
  }

  List<Track> tracks() {
    return tracks;
  }

  Optional<Unread.Cause> hint() {
    return hint;
  }

  Sighting sighting(Track track, PoseReading.Text text) {
    return Sightings.of(track.pose(), text, camera);
  }

  void next(GreyImage picture, int frame) {
    Pyramid pyramid = Pyramid.of(picture);
    List<Track> kept = new ArrayList<>();
    for (Track track : tracks) {
      PoseReading reading = pictures.follow(pyramid, track.pose());
      doubts.note(reading, frame);
      if (reading.pattern() > FOLLOW && track.isAt(reading.pose())) {
        kept.add(join(track, reading, frame));
      } else if (frame - track.seen() < FORGET) {
        kept.add(track);
      }
    }
    boolean settled = kept.stream().anyMatch(track -> track.told() == frame);
    boolean busy = settled || kept.size() > 1;
    // odd frames are for what is in doubt: there is no time for that and a search in one frame
    boolean even = frame % 2 == 0;
    Optional<Pose> doubt = settled || even ? Optional.empty() : doubts.next(kept);
    if (doubt.isPresent()) {
      take(kept, pictures.loosen(pyramid, doubt.get()), frame);
    } else if (!busy || even) {
      take(kept, search(pyramid), frame);
    }
    tracks = settle(kept);
    hint = kept.isEmpty() ? Optional.empty() : hintFor(picture, kept.get(0));
  }

  /** The tracks last read come first; what lies over one of them another way round is given up. */
  private static List<Track> settle(List<Track> kept) {
    List<Track> settled = new ArrayList<>();
    kept.sort(Comparator.comparingInt(Track::told).thenComparingDouble(Track::pattern).reversed());
    for (Track track : kept) {
      boolean spare =
          settled.stream()
              .anyMatch(
                  other ->
                      other.isAt(track.pose())
                          || (other.text().isPresent() && other.overlaps(track.pose())));
      if (!spare) {
        settled.add(track);
      }
    }
    return settled;
  }

  private Optional<Unread.Cause> hintFor(GreyImage picture, Track track) {
    return track.text().isPresent()
        ? Optional.empty()
        : Optional.of(Causes.of(picture, track.pose(), pattern, camera));
  }

  /** One more way of looking for tags, the next each time. */
  private List<PoseReading> search(Pyramid pyramid) {
    Threshold cut = CUTS.get(searches++ % CUTS.size());
    int followed = cut.level() == 0 ? FOLLOWED_WHOLE : FOLLOWED;
    return pictures.scan(pyramid, List.of(cut), followed);
  }

  private void take(List<Track> kept, List<PoseReading> readings, int frame) {
    for (PoseReading reading : readings) {
      doubts.note(reading, frame);
      take(kept, reading, frame);
    }
  }

  /** Until one is read, a place may be followed in several ways round. */
  private void take(List<Track> kept, PoseReading reading, int frame) {
    Optional<Track> same = kept.stream().filter(track -> track.isAt(reading.pose())).findFirst();
    if (same.isPresent()) {
      renew(kept, same.get(), reading, frame);
      return;
    }
    boolean readHere =
        kept.stream().anyMatch(track -> track.text().isPresent() && track.overlaps(reading.pose()));
    if (reading.text().isPresent() || (reading.pattern() > FOLLOW && !readHere)) {
      makeRoom(kept, reading);
      if (kept.size() < MOST_TRACKS) {
        kept.add(Track.begin(reading, frame));
      }
    }
  }

  private void renew(List<Track> kept, Track track, PoseReading reading, int frame) {
    int at = kept.indexOf(track);
    if (track.seen() < frame) {
      kept.set(at, join(track, reading, frame));
    } else if (reading.pattern() > track.pattern() + 0.05
        || (reading.text().isPresent() && track.told() < frame)) {
      kept.set(at, Track.begin(reading, frame));
    }
  }

  /** A place that fits better takes the room of the worst one that was never read. */
  private static void makeRoom(List<Track> kept, PoseReading reading) {
    if (kept.size() == MOST_TRACKS) {
      kept.stream()
          .filter(track -> track.text().isEmpty() && track.pattern() < reading.pattern())
          .min(Comparator.comparingDouble(Track::pattern))
          .ifPresent(kept::remove);
    }
  }

  private Track join(Track track, PoseReading reading, int frame) {
    boolean swapped =
        reading.text().isPresent()
            && track.text().isPresent()
            && !reading.text().get().digits().equals(track.text().get().digits());
    if (swapped) {
      return Track.begin(reading, frame);
    }
    SoftGrid sum = reading.grid().plus(track.grid(), Track.FADE);
    Optional<PoseReading.Text> text =
        reading.text().isPresent() ? reading.text() : pictures.text(sum, reading.pattern());
    return new Track(
        reading.pose(),
        sum,
        text.isPresent() ? text : track.text(),
        reading.pattern(),
        frame,
        text.isPresent() ? frame : track.told());
  }
}
