package wherefrom.inspection.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.text.Words;

/** The results of a plan that a limit can be typed for. */
public final class ResultKeys {

  /**
   * A result.
   *
   * @param key the name in files
   * @param words the name for people
   */
  public record Bounded(String key, String words) {}

  private static final Bounded CLEARANCE = new Bounded("clearance", "oil clearance");

  private static final List<Bounded> SPREAD =
      List.of(
          new Bounded("smallest", "smallest reading"),
          new Bounded("largest", "largest reading"),
          new Bounded("mean", "mean"),
          new Bounded("spread", "spread"));

  private ResultKeys() {}

  private static Bounded of(Station station) {
    return new Bounded(station.key(), words(station));
  }

  /** A station as the name of a result: {@code top ring}. */
  static String words(Station station) {
    return Words.small(station.words());
  }

  /** In the order in which they are worked out; a journal also has its bearing's clearance. */
  public static List<Bounded> of(ReadingPlan plan) {
    return switch (plan.shape()) {
      case VALUE, HALF, AT -> List.of(new Bounded("value", plan.title()));
      case SHIM ->
          List.of(new Bounded("value", plan.title()), new Bounded("shim", "shim that makes it"));
      case PRESS -> List.of(new Bounded("press", "press"));
      case DEGREES ->
          List.of(
              new Bounded("smallest", "smallest reading"),
              new Bounded("least", "least, by the curve"),
              new Bounded("least-at", "least at, after top dead center"));
      case LEAK -> List.of(new Bounded("leak", "leak-down"));
      case LARGEST -> List.of(new Bounded("largest", "largest reading"));
      case LIFT -> List.of(new Bounded("lift", "lobe lift"));
      case SPREAD -> SPREAD;
      case EACH ->
          Stream.concat(plan.stations().stream().map(ResultKeys::of), SPREAD.stream()).toList();
      case JOURNAL -> {
        List<Bounded> keys = new ArrayList<>(shape());
        keys.add(2, new Bounded("smallest", "smallest reading"));
        keys.add(CLEARANCE);
        yield keys;
      }
      case BORE -> shape();
    };
  }

  private static List<Bounded> shape() {
    return List.of(
        new Bounded("out-of-round", "out-of-round"),
        new Bounded("taper", "taper"),
        new Bounded("wear", "wear"));
  }

  public static Optional<Bounded> find(ReadingPlan plan, String key) {
    return of(plan).stream().filter(result -> result.key().equals(key)).findFirst();
  }
}
