package wherefrom.workings.catalogue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.BiConsumer;
import java.util.function.Function;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Measured;
import wherefrom.quantity.Unit;
import wherefrom.workings.Entry;
import wherefrom.workings.Inputs;
import wherefrom.workings.Working;

/** Random inputs of one working, and each result worked out another way to 50 digits. */
final class Sample {
  /** A figure's unit, its ends, and the places after the point it is typed with. */
  private record Spelling(Unit unit, double least, double most, int decimals) {}

  private final String key;
  private final List<BiConsumer<Random, Map<String, Entry>>> draws = new ArrayList<>();
  private final Map<String, Function<Sample.Given, Big>> references = new LinkedHashMap<>();

  /** The inputs of one draw, in base units. */
  record Given(Inputs inputs) {
    Big get(String input) {
      return new Big(inputs.findMeasured(input).orElseThrow().value().inBase());
    }

    boolean has(String input) {
      return inputs.find(input).isPresent();
    }

    boolean chose(String input, String word) {
      return inputs.find(input).equals(java.util.Optional.of(new Entry.Choice(word)));
    }
  }

  Sample(String key) {
    this.key = key;
  }

  String key() {
    return key;
  }

  Working working() {
    return Workings.find(key).orElseThrow();
  }

  Map<String, Function<Given, Big>> references() {
    return references;
  }

  Inputs draw(Random random) {
    Map<String, Entry> entries = new LinkedHashMap<>();
    draws.forEach(draw -> draw.accept(random, entries));
    return new Inputs(entries);
  }

  /** A length in mm or in, off by up to so many mm. */
  Sample length(String input, double least, double most, double uncertainty) {
    return figure(
        input,
        uncertainty,
        new Spelling(Unit.MILLIMETRE, least, most, 3),
        new Spelling(Unit.INCH, least / 25.4, most / 25.4, 4));
  }

  Sample volume(String input, double least, double most, double uncertainty) {
    return figure(
        input,
        uncertainty * 1000,
        new Spelling(Unit.CUBIC_CENTIMETRE, least, most, 2),
        new Spelling(Unit.CUBIC_INCH, least / 16.387064, most / 16.387064, 3));
  }

  /** An area in cc per mm, which is 1000 mm². */
  Sample opening(String input, double least, double most, double uncertainty) {
    return figure(
        input,
        uncertainty * 1000,
        new Spelling(Unit.CC_PER_MILLIMETRE, least, most, 3),
        new Spelling(Unit.CC_PER_THOU, least * 0.0254, most * 0.0254, 4),
        new Spelling(Unit.SQUARE_INCH, least / 0.64516, most / 0.64516, 3));
  }

  Sample angle(String input, double least, double most, double uncertainty) {
    return figure(input, uncertainty, new Spelling(Unit.DEGREE, least, most, 2));
  }

  Sample number(String input, double least, double most, int decimals, double uncertainty) {
    return figure(input, uncertainty, new Spelling(Unit.ONE, least, most, decimals));
  }

  Sample force(String input, double least, double most, double uncertainty) {
    return figure(
        input,
        uncertainty,
        new Spelling(Unit.NEWTON, least, most, 1),
        new Spelling(Unit.POUND, least / 4.448, most / 4.448, 1));
  }

  /** A pressure in MPa, typed in psi or kPa. */
  Sample pressure(String input, double least, double most, double uncertainty) {
    return figure(
        input,
        uncertainty,
        new Spelling(Unit.KILOPASCAL, least * 1000, most * 1000, 0),
        new Spelling(Unit.PSI, least * 145.0377, most * 145.0377, 1));
  }

  Sample figure(String input, double uncertaintyInBase, Unit unit, double least, double most) {
    return figure(input, uncertaintyInBase, new Spelling(unit, least, most, 3));
  }

  private Sample figure(String input, double uncertaintyInBase, Spelling... spellings) {
    draws.add(
        (random, entries) -> {
          Spelling s = spellings[random.nextInt(spellings.length)];
          double size = s.least + (s.most - s.least) * random.nextDouble();
          long digits = Math.round(size * Math.pow(10, s.decimals));
          BigDecimal typed = BigDecimal.valueOf(digits, s.decimals);
          Measured measured = spread(random, new Amount(typed, s.unit), uncertaintyInBase);
          entries.put(input, new Entry.Figure(measured));
        });
    return this;
  }

  static Measured spread(Random random, Amount value, double uncertaintyInBase) {
    if (uncertaintyInBase == 0) {
      return Measured.of(value);
    }
    double perBase =
        value.unit().denominator().doubleValue() / value.unit().numerator().doubleValue();
    double most = uncertaintyInBase * perBase;
    long digits = Math.round(most * (0.1 + 0.9 * random.nextDouble()) * 1e9);
    return Measured.of(value, new Amount(BigDecimal.valueOf(digits, 9), value.unit()));
  }

  Sample count(String input, int least, int most) {
    draws.add(
        (random, entries) -> {
          Amount count =
              new Amount(BigDecimal.valueOf(least + random.nextInt(most - least + 1)), Unit.PIECES);
          entries.put(input, new Entry.Figure(Measured.of(count)));
        });
    return this;
  }

  Sample choice(String input, String... words) {
    draws.add(
        (random, entries) ->
            entries.put(input, new Entry.Choice(words[random.nextInt(words.length)])));
    return this;
  }

  /** Draws more inputs in a way of its own. */
  Sample also(Function<Random, Inputs> draw) {
    draws.add((random, entries) -> entries.putAll(draw.apply(random).entries()));
    return this;
  }

  Sample gives(String result, Function<Given, Big> reference) {
    references.put(result, reference);
    return this;
  }
}
