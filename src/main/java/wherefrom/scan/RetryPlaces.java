package wherefrom.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wherefrom.scan.geometry.Pose;
import wherefrom.scan.match.SymbolMatch;

/**
 * Places on a live picture where the pattern half fits and nothing was read: a splash or a rod
 * holds the fit fast beside its place or a quarter turned. Each is tried again, in turn.
 */
final class RetryPlaces {
  private static final int MOST = 3;

  /** A place not come upon for so many frames is forgotten. */
  private static final int FORGET = 4;

  /** A fit that is worse by less than this is taken for the same one, and newer. */
  private static final double ABOUT = 0.05;

  /** A worse fit is not worth a try. */
  private static final double LEAST = 0.3;

  /** How many tries a whole fit of the pattern is worth: the likelier place comes first. */
  private static final double WORTH = 8;

  /** How much of a fit a lead of one issued tag over the others is worth. */
  private static final double LEADING = 0.12;

  /** A place, and how likely it looked. */
  private record Doubt(Track place, double likely, int tries) {
    Doubt again() {
      return new Doubt(place, likely, tries + 1);
    }

    double turn() {
      return tries - WORTH * likely;
    }
  }

  private final List<Doubt> doubts = new ArrayList<>();

  /** Notes a place; one where something was read is in doubt no longer. */
  void note(PoseReading reading, int frame) {
    Optional<Doubt> known =
        doubts.stream().filter(doubt -> doubt.place().overlaps(reading.pose())).findFirst();
    double likely =
        reading.pattern() + LEADING * reading.match().map(SymbolMatch::lead).orElse(0.0);
    if (reading.text().isPresent()) {
      known.ifPresent(doubts::remove);
    } else if (known.isEmpty() && reading.pattern() > LEAST) {
      doubts.add(new Doubt(Track.begin(reading, frame), likely, 0));
    } else if (known.isPresent() && likely > known.get().likely() - ABOUT) {
      Track place = Track.begin(reading, frame);
      doubts.set(doubts.indexOf(known.get()), new Doubt(place, likely, known.get().tries()));
    }
    doubts.removeIf(doubt -> frame - doubt.place().seen() > FORGET);
    doubts.sort(Comparator.comparingDouble(doubt -> -doubt.likely()));
    doubts.subList(Math.min(MOST, doubts.size()), doubts.size()).clear();
  }

  /**
   * The place whose turn it is: as it was found, and every other time turned by quarters, first to
   * a way round that is not followed yet.
   */
  Optional<Pose> next(List<Track> followed) {
    Optional<Doubt> next = doubts.stream().min(Comparator.comparingDouble(Doubt::turn));
    next.ifPresent(doubt -> doubts.set(doubts.indexOf(doubt), doubt.again()));
    return next.map(
        doubt -> {
          Pose pose = doubt.place().pose();
          return doubt.tries() % 2 == 0 ? pose : turned(pose, doubt.tries() / 2, followed);
        });
  }

  private static Pose turned(Pose pose, int before, List<Track> followed) {
    List<Pose> others =
        IntStream.range(0, 3).mapToObj(turn -> pose.turned(1 + (before + turn) % 3)).toList();
    return others.stream()
        .filter(other -> followed.stream().noneMatch(track -> track.isAt(other)))
        .findFirst()
        .orElse(others.get(0));
  }
}
