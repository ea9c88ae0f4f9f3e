package wherefrom.ui.photos;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.engine.Spot;
import wherefrom.inspection.Subject;
import wherefrom.job.OpenJob;
import wherefrom.job.photos.Photograph;
import wherefrom.job.photos.Photographing;
import wherefrom.ui.subject.Group;

/** Photographs that show no tag, one after the other: each is filed, passed over, or left. */
final class OfferModel {

  /** A photograph that is filed: the how-manieth it is, and its name in the job. */
  private record Filed(int at, Set<String> names) {}

  private final OpenJob job;
  private final List<Path> files;
  private final Deque<Filed> filed = new ArrayDeque<>();
  private int at;
  private boolean keeping;

  /**
   * @param files pictures that lie outside the job
   */
  OfferModel(OpenJob job, List<Path> files) {
    this.job = job;
    this.files = List.copyOf(files);
  }

  OpenJob job() {
    return job;
  }

  /** Whether one is being copied into the job: it lasts longer than a screen may. */
  boolean isKeeping() {
    return keeping;
  }

  void keeping(boolean now) {
    keeping = now;
  }

  /** The picture that is asked about; empty when all have been. */
  Optional<Path> file() {
    return at < files.size() ? Optional.of(files.get(at)) : Optional.empty();
  }

  /** Those that have no answer yet, the one that is asked about first. */
  List<Path> rest() {
    return files.subList(at, files.size());
  }

  /** Which one is asked about, from 1. */
  int number() {
    return Math.min(at + 1, files.size());
  }

  int all() {
    return files.size();
  }

  /** Asks about the next one; this one stays where it is. */
  void skip() {
    at = Math.min(at + 1, files.size());
  }

  /**
   * Files one, or all that are left, as one step, and goes on to the next.
   *
   * @param subject what they show; empty for the whole engine
   * @param names of the copies in the job's folder
   */
  void file(Optional<Subject> subject, List<String> names) {
    Photographing photographing = new Photographing(job);
    job.asOne(
        () -> {
          names.forEach(name -> photographing.add(subject, "", name, ""));
          return names.size();
        });
    filed.push(new Filed(at, new LinkedHashSet<>(names)));
    at = Math.min(at + names.size(), files.size());
  }

  /** What was taken back is asked about again. */
  void changed() {
    List<String> kept =
        new ArrayList<>(Photograph.listAll(job.state()).stream().map(Photograph::file).toList());
    while (!filed.isEmpty() && !kept.containsAll(filed.peek().names())) {
      at = filed.pop().at();
    }
  }

  /** What lives at a spot and can be photographed: the parts that came out, and what has no tag. */
  List<Subject> at(Spot spot) {
    return Group.of(job.state()).stream()
        .flatMap(group -> group.subjects().stream())
        .filter(subject -> isAt(subject, spot))
        .toList();
  }

  private boolean isAt(Subject subject, Spot spot) {
    return subject.match(
        part -> job.state().getPart(part.item()).part().home().spot().equals(spot),
        at -> at.isAt(spot),
        beside -> false);
  }
}
