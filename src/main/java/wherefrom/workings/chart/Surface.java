package wherefrom.workings.chart;

import java.util.function.ToDoubleFunction;

/**
 * What is drawn on.
 *
 * @param capital the height of a capital letter
 * @param widths how wide words are
 */
public record Surface(
    double width, double height, double capital, ToDoubleFunction<String> widths) {

  double widthOf(String words) {
    return widths.applyAsDouble(words);
  }
}
