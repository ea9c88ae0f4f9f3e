package wherefrom.ui.torque;

import java.util.ArrayList;
import java.util.List;

/** The person's own order: bolts touched one after the other. */
final class SequenceModel {
  private final List<Integer> touched = new ArrayList<>();

  /** A bolt was touched; one that has its number keeps it. */
  void touch(int position) {
    if (!touched.contains(position)) {
      touched.add(position);
    }
  }

  void takeBack() {
    if (!touched.isEmpty()) {
      touched.remove(touched.size() - 1);
    }
  }

  List<Integer> order() {
    return List.copyOf(touched);
  }

  /** What is drawn at a position. */
  BoltFace face(int position) {
    int at = touched.indexOf(position);
    return at < 0
        ? new BoltFace("", BoltFace.Look.OPEN)
        : new BoltFace(Integer.toString(at + 1), BoltFace.Look.DONE);
  }
}
