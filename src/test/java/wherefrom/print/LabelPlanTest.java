package wherefrom.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wherefrom.parts.LabelFrame;

class LabelPlanTest {
  static Stream<LabelStock> stocks() {
    return StockShelf.ofReady().listStocks().stream();
  }

  private static LabelPlan plan(LabelStock stock, int dpi) {
    return LabelPlan.find(stock, dpi).orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("stocks")
  void symbolAndWordsLieOnTheLabelApartFromEachOtherAndFromTheHole(LabelStock stock) {
    for (int dpi : List.of(203, 300, 600)) {
      LabelPlan plan = plan(stock, dpi);
      assertThat(plan.label().contains(plan.symbol())).isTrue();
      assertThat(plan.label().contains(plan.words())).isTrue();
      assertThat(plan.symbol().overlaps(plan.words())).isFalse();
      assertThat(plan.symbol().overlaps(plan.keepOut())).isFalse();
      assertThat(plan.words().overlaps(plan.keepOut())).isFalse();
      assertThat(plan.words().width()).isGreaterThanOrEqualTo(LabelPlan.LEAST_TEXT_MM);
    }
  }

  @ParameterizedTest
  @MethodSource("stocks")
  void aModuleIsTheMostWholeDotsThatFitTheLabel(LabelStock stock) {
    for (int dpi : List.of(203, 300, 600)) {
      LabelPlan plan = plan(stock, dpi);
      double side = plan.symbol().width();
      assertThat(side).isEqualTo(LabelFrame.WIDTH * plan.moduleDots() * 25.4 / dpi);
      double larger = LabelFrame.WIDTH * (plan.moduleDots() + 1) * 25.4 / dpi;
      assertThat(fitsBeside(plan, larger) || fitsBelow(plan, larger))
          .as("one dot more on %s", stock.name())
          .isFalse();
      assertThat(plan.moduleMm()).isGreaterThanOrEqualTo(0.396);
    }
  }

  private static boolean fitsBeside(LabelPlan plan, double symbol) {
    Box label = plan.label();
    double free = label.width() - Math.max(plan.words().x(), plan.keepOut().width());
    double words = Math.max(24, 0.42 * free);
    return symbol + 1.5 <= label.height() && symbol + words + 1.35 <= free;
  }

  private static boolean fitsBelow(LabelPlan plan, double symbol) {
    Box label = plan.label();
    double free = label.height() - plan.words().y();
    double words = Math.max(24, 0.42 * free);
    return symbol + 1.5 <= label.width() - plan.keepOut().width() && symbol + words + 1.35 <= free;
  }
}
