package wherefrom.cli;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Figures typed in one word, such as {@code bore=98,3mm,stroke=84mm}. A comma parts two figures
 * where a key and an equals sign follow it; any other comma belongs to the figure before it.
 */
final class FigureList {
  private static final Pattern PARTING = Pattern.compile("\\s*,\\s*(?=[A-Za-z][A-Za-z0-9-]*\\s*=)");

  private FigureList() {}

  static List<String> of(List<String> words) {
    return words.stream()
        .flatMap(FigureList::split)
        .map(String::strip)
        .filter(figure -> !figure.isEmpty())
        .toList();
  }

  private static Stream<String> split(String word) {
    return PARTING.splitAsStream(word.strip().replaceFirst(",$", ""));
  }
}
