package wherefrom.workings;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.MeasuredReading;
import wherefrom.quantity.MeasuredText;
import wherefrom.quantity.Unit;

/**
 * Reads the command line's {@code key=value} texts, such as {@code bore=3.870in±0.0005in}, {@code
 * chamber=72cc} or {@code lubricant=oiled}. Figures must name their unit unless they are plain
 * numbers or counts. See {@link MeasuredText} for what ± means.
 */
public final class InputText {
  private InputText() {}

  public static InputsReading read(Working working, List<String> texts) {
    Inputs inputs = Inputs.empty();
    for (String text : texts) {
      int equals = text.indexOf('=');
      if (equals < 1) {
        return refuse(text, "\"" + text + "\" is not of the form key=value.");
      }
      String key = text.substring(0, equals).strip();
      if (inputs.find(key).isPresent()) {
        return refuse(key, "\"" + key + "\" is given twice. Give it once.");
      }
      EntryReading reading = readEntry(working.card(), key, text.substring(equals + 1).strip());
      if (reading instanceof EntryReading.NotUnderstood not) {
        return refuse(key, not.sentence());
      }
      inputs = inputs.withEntry(key, ((EntryReading.Understood) reading).entry());
    }
    return new InputsReading.Understood(inputs);
  }

  /** Reads one value for the input with the key. */
  public static EntryReading readEntry(WorkingCard card, String key, String value) {
    Optional<InputSpec> spec = card.findInput(key);
    if (spec.isPresent() && spec.get() instanceof AmountInput input) {
      return readFigure(input, value);
    }
    return new EntryReading.Understood(new Entry.Choice(value.toLowerCase(Locale.ROOT)));
  }

  private static EntryReading readFigure(AmountInput input, String value) {
    MeasuredReading reading =
        usualUnit(input.dimension())
            .map(unit -> MeasuredText.read(value, unit))
            .orElseGet(() -> MeasuredText.read(value));
    if (reading instanceof MeasuredReading.Understood understood) {
      return new EntryReading.Understood(new Entry.Figure(understood.measured()));
    }
    String sentence = ((MeasuredReading.NotUnderstood) reading).sentence();
    return new EntryReading.NotUnderstood(input.key() + ": " + sentence);
  }

  private static Optional<Unit> usualUnit(Dimension dimension) {
    return switch (dimension) {
      case NUMBER -> Optional.of(Unit.ONE);
      case COUNT -> Optional.of(Unit.PIECES);
      default -> Optional.empty();
    };
  }

  private static InputsReading refuse(String key, String sentence) {
    return new InputsReading.NotUnderstood(new Nonsense(key, sentence));
  }
}
