package wherefrom.rules.before;

import java.util.List;
import java.util.stream.Stream;

/** Two lists of places as one, each place once. */
final class Together {
  private Together() {}

  static List<LookAt> of(List<LookAt> first, List<LookAt> second) {
    return Stream.concat(first.stream(), second.stream()).distinct().toList();
  }
}
