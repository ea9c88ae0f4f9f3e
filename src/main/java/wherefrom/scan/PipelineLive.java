package wherefrom.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.LiveAnswer;
import wherefrom.job.reader.LiveReader;
import wherefrom.job.reader.Sighting;
import wherefrom.scan.geometry.CameraModel;
import wherefrom.scan.geometry.LabelPattern;
import wherefrom.scan.match.IssuedSymbols;

/**
 * Follows a live picture: tags that were found are looked for where they were, and each frame one
 * more way of looking for new ones is tried, or a place that was not read is tried anew. Evidence
 * of the frames adds up.
 */
final class PipelineLive implements LiveReader {
  /** A tag not read for so many frames has left. */
  private static final int LEFT = 8;

  /** Tags read within so many frames are in view together. */
  private static final int TOGETHER = 3;

  private final LabelPattern pattern;
  private final IssuedSymbols issued;
  private Optional<LiveScan> scan = Optional.empty();
  private int width;
  private int height;
  private int frame;
  private Optional<Sighting> current = Optional.empty();
  private int lastSeen;

  PipelineLive(LabelPattern pattern, IssuedSymbols issued) {
    this.pattern = pattern;
    this.issued = issued;
  }

  @Override
  public LiveAnswer accept(GreyImage picture) {
    frame++;
    LiveScan now = scanOf(picture);
    now.next(picture, frame);
    List<Sighting> inView = new ArrayList<>();
    for (Track track : now.tracks()) {
      if (frame - track.told() < TOGETHER) {
        track.text().map(text -> now.sighting(track, text)).ifPresent(inView::add);
      }
    }
    if (inView.size() > 1) {
      return new LiveAnswer.Several(inView);
    }
    return inView.isEmpty() ? nothingRead(now) : read(inView.get(0));
  }

  private LiveAnswer read(Sighting sighting) {
    boolean known = current.filter(tag -> tag.text().equals(sighting.text())).isPresent();
    current = Optional.of(sighting);
    lastSeen = frame;
    return known ? new LiveAnswer.StillThere(sighting) : new LiveAnswer.Read(sighting);
  }

  private LiveAnswer nothingRead(LiveScan now) {
    if (current.isPresent() && frame - lastSeen < LEFT) {
      return new LiveAnswer.StillThere(current.get());
    }
    current = Optional.empty();
    return new LiveAnswer.Nothing(now.hint());
  }

  private LiveScan scanOf(GreyImage picture) {
    if (scan.isEmpty() || picture.width() != width || picture.height() != height) {
      width = picture.width();
      height = picture.height();
      scan = Optional.of(new LiveScan(pattern, CameraModel.of(width, height), issued));
    }
    return scan.get();
  }
}
