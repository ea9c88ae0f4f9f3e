package wherefrom.job.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import wherefrom.engine.ShellHalf;
import wherefrom.engine.Spot;
import wherefrom.inspection.Look;
import wherefrom.job.EngineJob;
import wherefrom.job.LoggedEntry;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.parts.PartKind;
import wherefrom.rules.debris.BearingLook;
import wherefrom.rules.debris.BearingLooks;
import wherefrom.rules.debris.Opening;

/** What the used bearing shells have shown so far, and which of them nobody has looked at. */
final class BearingFaces {
  private final EngineJob job;
  private final List<BearingLook> looks = new ArrayList<>();
  private final Set<Integer> cleanMains = new TreeSet<>();
  private final Set<Integer> cleanRods = new TreeSet<>();
  private boolean firstSeen;
  private boolean allSeen;

  private BearingFaces(EngineJob job) {
    this.job = job;
  }

  static BearingLooks of(EngineJob job) {
    BearingFaces faces = new BearingFaces(job);
    faces.openings();
    faces.shells();
    return new BearingLooks(faces.looks, faces.leftFirst(), faces.leftAll());
  }

  /** The last answer to each of the two openings that show bearings. */
  private void openings() {
    for (Opening opening : List.of(Opening.FIRST_BEARINGS, Opening.ALL_BEARINGS)) {
      Optional<CheckAnswered> last = Optional.empty();
      for (LoggedEntry logged : job.standing()) {
        if (logged.entry() instanceof CheckAnswered answered
            && answered.check().equals(opening.check())) {
          last = Optional.of(answered);
        }
      }
      last.filter(answer -> answer.look() != Look.NOT_LOOKED)
          .ifPresent(answer -> take(opening, answer));
    }
  }

  private void take(Opening opening, CheckAnswered answer) {
    String note = answer.words().isEmpty() ? "" : " (" + answer.words() + ")";
    looks.add(new BearingLook(opening.title() + note, answer.look()));
    if (answer.look() == Look.PASS) {
      firstSeen = true;
      allSeen |= opening == Opening.ALL_BEARINGS;
    }
  }

  private void shells() {
    for (PartRecord part : job.parts()) {
      PartKind kind = part.part().kind();
      if ((kind == PartKind.MAIN_SHELL || kind == PartKind.ROD_SHELL) && !part.part().fresh()) {
        Look look = part.looks().getOrDefault(kind.key() + "-face", Look.NOT_LOOKED);
        if (look != Look.NOT_LOOKED) {
          looks.add(new BearingLook(part.part().words(), look));
        }
        if (look == Look.PASS) {
          clean(part);
        }
      }
    }
  }

  /** Wear shows on the lower main shells first: the uppers tell nothing for sure. */
  private void clean(PartRecord part) {
    Spot spot = part.part().home().spot();
    switch (part.part().kind()) {
      case ROD_SHELL -> cleanRods.add(spot.number());
      case MAIN_SHELL -> {
        if (spot.findHalf().equals(Optional.of(ShellHalf.LOWER))) {
          cleanMains.add(spot.number());
        }
      }
      default -> throw new IllegalArgumentException("no shell: " + part.part().words());
    }
  }

  private List<String> leftFirst() {
    if (firstSeen) {
      return List.of();
    }
    List<String> left = new ArrayList<>();
    for (int main : new TreeSet<>(List.of(1, job.layout().mains()))) {
      lower(main).ifPresent(left::add);
    }
    int pins = job.layout().rodJournals() - cleanRods.size();
    if (pins > 0) {
      left.add("a rod shell of each crank pin: " + pins + " to go");
    }
    return left;
  }

  private List<String> leftAll() {
    if (allSeen) {
      return List.of();
    }
    List<String> left = new ArrayList<>();
    for (int main = 1; main <= job.layout().mains(); main++) {
      lower(main).ifPresent(left::add);
    }
    for (int rod : job.layout().cylinders()) {
      if (!cleanRods.contains(rod)) {
        left.add("rod " + rod + ", a shell");
      }
    }
    return left;
  }

  private Optional<String> lower(int main) {
    return cleanMains.contains(main)
        ? Optional.empty()
        : Optional.of("main " + main + (job.layout().mainCaps() ? ", lower shell" : ", a shell"));
  }
}
