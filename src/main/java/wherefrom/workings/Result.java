package wherefrom.workings;

import java.util.List;
import java.util.Optional;

/**
 * A working's results.
 *
 * @param values at least one
 * @param notes conclusions, cautions and remarks
 * @param takenAsExact the inputs for which no uncertainty was stated, in words
 */
public record Result(List<ResultValue> values, List<Note> notes, List<String> takenAsExact)
    implements WorkingAnswer {
  public Result {
    values = List.copyOf(values);
    notes = List.copyOf(notes);
    takenAsExact = List.copyOf(takenAsExact);
  }

  /** The result with the key. */
  public ResultValue getValue(String key) {
    return findValue(key).orElseThrow(() -> new IllegalArgumentException("no result " + key));
  }

  public Optional<ResultValue> findValue(String key) {
    return values.stream().filter(value -> value.key().equals(key)).findFirst();
  }

  public Optional<Note> findNote(String key) {
    return notes.stream().filter(note -> note.key().equals(key)).findFirst();
  }
}
