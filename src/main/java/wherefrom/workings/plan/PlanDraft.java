package wherefrom.workings.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wherefrom.quantity.Unit;
import wherefrom.workings.Figure;
import wherefrom.workings.InputSpec;
import wherefrom.workings.Note;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.catalogue.basis.Gap;
import wherefrom.workings.maths.DualNumber;

/** A column of the plan while it is being worked out, step by step. */
final class PlanDraft {
  private final Terms terms;
  private final List<Figure> figures = new ArrayList<>();
  private final List<Note> notes = new ArrayList<>();

  PlanDraft(Terms terms) {
    this.terms = terms;
  }

  Terms terms() {
    return terms;
  }

  /** Whether every input is there; if not, says what the result still needs. */
  boolean hasAll(String result, InputSpec... inputs) {
    List<InputSpec> missing = Arrays.stream(inputs).filter(input -> !terms.has(input)).toList();
    if (missing.isEmpty()) {
      return true;
    }
    String names = missing.stream().map(InputSpec::words).collect(Collectors.joining(", "));
    notes.add(
        Note.lacking(
            "needs-" + result.replace(' ', '-'),
            result + " is not worked out: still needed: " + names + ".",
            Source.workedOut("the inputs given")));
    return false;
  }

  DualNumber get(InputSpec input) {
    return terms.get(input);
  }

  /** The figure, or zero where the plan does not change it. */
  DualNumber orZero(InputSpec input) {
    return terms.find(input).orElseGet(() -> DualNumber.of(0));
  }

  void length(String key, String words, DualNumber value) {
    add(key, words, terms.lengthUnit(), value);
  }

  /** A gap, and in plain words what touches where none is left. */
  void gap(Gap gap, String words, DualNumber left) {
    length(gap.key(), words, left);
    gap.findTouch(left, terms.lengthUnit()).ifPresent(notes::add);
  }

  void add(String key, String words, Unit unit, DualNumber value) {
    figures.add(new Figure(key, words, unit, value));
  }

  void note(Note note) {
    notes.add(note);
  }

  Optional<DualNumber> find(String key) {
    return figures.stream()
        .filter(figure -> figure.key().equals(key))
        .map(Figure::inBase)
        .findFirst();
  }

  Values values() {
    return new Values(figures, notes);
  }
}
