package wherefrom.rules.before;

import java.util.List;

/**
 * What a test before teardown showed, and what it points to. It says where to look, never what is
 * wrong: what is seen there decides.
 *
 * @param id of the rule, such as {@code low-rings}; never changes
 * @param cylinders that it is about; none for the whole engine
 * @param found what was read, in a sentence
 * @param pointsTo what that may mean and what to do, in a sentence
 * @param lookAt where to look when it is open
 * @param open whether it can be told only by reading again
 * @param source where the reading of it comes from
 */
public record Symptom(
    String id,
    List<Integer> cylinders,
    String found,
    String pointsTo,
    List<LookAt> lookAt,
    boolean open,
    String source) {
  public Symptom {
    cylinders = List.copyOf(cylinders);
    lookAt = List.copyOf(lookAt);
  }

  static Symptom of(String id, List<Integer> cylinders, String found) {
    return new Symptom(id, cylinders, found, "", List.of(), false, "");
  }

  Symptom pointsTo(String words, List<LookAt> where) {
    return new Symptom(id, cylinders, found, words, where, false, source);
  }

  /** Nothing to look at yet: another reading tells. */
  Symptom readAgain(String words) {
    return new Symptom(id, cylinders, found, words, List.of(), true, source);
  }

  Symptom from(String text) {
    return new Symptom(id, cylinders, found, pointsTo, lookAt, open, text);
  }

  /** Both sentences. */
  public String sentence() {
    return found + " " + pointsTo;
  }
}
