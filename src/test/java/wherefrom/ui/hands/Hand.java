package wherefrom.ui.hands;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import wherefrom.parts.Place;

/** One way to work the window, with nothing else at hand. */
abstract class Hand {
  final ShownWindow window;
  final Tally tally;

  Hand(ShownWindow window, String name) {
    this.window = window;
    this.tally = new Tally(name);
  }

  /** Presses this key, which can be pressed now. */
  protected abstract void press(Node target);

  /** The part that comes out next is out. */
  abstract void out(Place home);

  /** Says which part is in the hand. */
  abstract void part(Place home);

  /** Says which place is meant. */
  abstract void place(Place place);

  /** The right part cures the stop that stands. */
  void cure(Place home) {
    part(home);
  }

  /** Writes words where they are asked for, and is done. */
  abstract void write(String words);

  /** To the screen before. */
  abstract void back();

  /** So many acts it takes to come to the tag of a screen that has just come up. */
  int first() {
    return 0;
  }

  /** So many acts a way of a few presses of a finger may take. */
  abstract int most(int presses);

  /** So many acts it takes to say one code. */
  abstract int code();

  /** Presses keys by their first words, one after the other. */
  final void press(String... words) {
    for (String each : words) {
      press(found(each));
    }
  }

  /** The first key that begins with the words, on this page of a list or on a later one. */
  private Node found(String words) {
    Optional<Node> target = find(words);
    while (target.isEmpty()) {
      Node down =
          find("Down")
              .orElseThrow(
                  () ->
                      new AssertionError(
                          words + " is not among " + all() + ", said: " + window.message()));
      press(down);
      target = find(words);
    }
    return target.get();
  }

  private Optional<Node> find(String words) {
    return window.look(
        () -> {
          List<Node> targets = window.targets();
          return targets.stream()
              .filter(node -> window.words(node).equals(words))
              .findFirst()
              .or(
                  () ->
                      targets.stream()
                          .filter(node -> window.words(node).startsWith(words))
                          .findFirst());
        });
  }

  private List<String> all() {
    return window.look(() -> window.targets().stream().map(window::words).toList());
  }
}
