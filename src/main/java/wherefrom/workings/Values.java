package wherefrom.workings;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import wherefrom.quantity.Unit;
import wherefrom.workings.maths.DualNumber;

/** The outcomes of a formula, with what is to be said about them. */
public record Values(List<Figure> figures, List<Note> notes) implements Evaluation {
  public Values {
    figures = List.copyOf(figures);
    notes = List.copyOf(notes);
  }

  public static Values of(String key, String words, Unit unit, DualNumber inBase) {
    return new Values(List.of(new Figure(key, words, unit, inBase)), List.of());
  }

  public Values and(String key, String words, Unit unit, DualNumber inBase) {
    List<Figure> more = new ArrayList<>(figures);
    more.add(new Figure(key, words, unit, inBase));
    return new Values(more, notes);
  }

  /** A limit, which is shown rounded to the side that claims less. */
  public Values andLimit(
      String key, String words, Unit unit, DualNumber inBase, Rounding rounding) {
    List<Figure> more = new ArrayList<>(figures);
    more.add(new Figure(key, words, unit, inBase, rounding));
    return new Values(more, notes);
  }

  public Values note(Note note) {
    List<Note> more = new ArrayList<>(notes);
    more.add(note);
    return new Values(figures, more);
  }

  public Values notes(List<Note> others) {
    List<Note> more = new ArrayList<>(notes);
    more.addAll(others);
    return new Values(figures, more);
  }

  public Values noteIf(boolean applies, Supplier<Note> note) {
    return applies ? note(note.get()) : this;
  }
}
