package wherefrom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wherefrom.job.image.Camera;
import wherefrom.job.image.CameraFrame;
import wherefrom.job.image.FrameSource;
import wherefrom.job.ports.Services;
import wherefrom.job.reader.LiveAnswer;
import wherefrom.job.reader.LiveReader;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.Sighting;
import wherefrom.job.reader.Unread;
import wherefrom.parts.TagCode;

/** Reads the tags of a film frame by frame, as those that a camera sees. */
final class FilmReading {
  private static final Set<String> ENDINGS =
      Set.of("3gp", "avi", "m4v", "mkv", "mov", "mp4", "webm");

  private final LiveReader live;
  private final Map<String, Sighting> read = new LinkedHashMap<>();
  private final Map<Unread.Cause, Integer> hints = new EnumMap<>(Unread.Cause.class);

  private FilmReading(LiveReader live) {
    this.live = live;
  }

  /** Whether a file is a film by its name. */
  static boolean isFilm(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    return ENDINGS.contains(name.substring(name.lastIndexOf('.') + 1));
  }

  /**
   * Every tag that was read, once, in the order in which they came; where none was, what most often
   * stood against it, if anything looked like a tag.
   *
   * @throws IOException with a sentence when the film cannot be opened or is damaged
   */
  static Reading of(Path file, Services services, Collection<TagCode> issued) throws IOException {
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw new IOException(file + " is not a film. Choose one.");
    }
    FilmReading film = new FilmReading(services.reader().live(issued));
    try (FrameSource source = services.cameras().open(Camera.ofClip(file))) {
      Optional<CameraFrame> frame = source.next();
      while (frame.isPresent()) {
        film.take(frame.get());
        frame = source.next();
      }
    }
    return new Reading(List.copyOf(film.read.values()), film.unread());
  }

  private void take(CameraFrame frame) {
    LiveAnswer answer = live.accept(frame.grey());
    if (answer instanceof LiveAnswer.Nothing nothing) {
      nothing.hint().ifPresent(hint -> hints.merge(hint, 1, Integer::sum));
    }
    List<Sighting> seen =
        answer.match(
            nothing -> List.of(),
            tag -> List.of(tag.sighting()),
            still -> List.of(),
            LiveAnswer.Several::sightings);
    seen.forEach(sighting -> read.putIfAbsent(sighting.text(), sighting));
  }

  /** It has no outline: it was in many places of many frames. */
  private List<Unread> unread() {
    return hints.entrySet().stream()
        .filter(hint -> read.isEmpty())
        .max(Comparator.comparingInt(Map.Entry::getValue))
        .map(hint -> new Unread(hint.getKey(), List.of()))
        .stream()
        .toList();
  }
}
