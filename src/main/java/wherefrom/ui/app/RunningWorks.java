package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Long work that is shown now; the newest counts. */
final class RunningWorks {
  private final List<LongWork> works = new ArrayList<>();

  /** The work has news. */
  void follow(LongWork work) {
    if (!work.isEnded() && !works.contains(work)) {
      works.add(work);
    }
  }

  void end(LongWork work) {
    work.end();
    works.remove(work);
  }

  Optional<LongWork> newest() {
    return works.isEmpty() ? Optional.empty() : Optional.of(works.get(works.size() - 1));
  }

  /** The newest that can be stopped: work of one piece cannot be stopped within it. */
  Optional<LongWork> stoppable() {
    return newest().filter(work -> work.part() >= 0);
  }
}
