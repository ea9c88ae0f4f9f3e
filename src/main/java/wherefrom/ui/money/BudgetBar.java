package wherefrom.ui.money;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import wherefrom.job.money.Budget;
import wherefrom.quantity.Money;
import wherefrom.ui.controls.Scale;

/**
 * The total as a bar, darkest what is paid, and the budget as a thick line across it. It repeats
 * what the words say.
 */
final class BudgetBar extends Region {
  private static final double HIGH_MM = 9;

  private final Budget budget;
  private final double line;

  BudgetBar(Scale scale, Budget budget) {
    this.budget = budget;
    this.line = scale.px(0.5);
    setMinHeight(scale.px(HIGH_MM));
    setPrefHeight(scale.px(HIGH_MM));
    setMaxHeight(scale.px(HIGH_MM));
    setMouseTransparent(true);
  }

  @Override
  protected void layoutChildren() {
    double most = Math.max(budget.total().cents(), budget.limit().cents()) * 1.04;
    List<Node> shapes = new ArrayList<>();
    double from = 0;
    List<Money> sums =
        List.of(
            budget.paid(),
            budget.committed(),
            budget.quoted(),
            budget.planned().plus(budget.toBuy()),
            budget.contingency());
    for (int at = 0; at < sums.size() && most > 0; at++) {
      double wide = getWidth() * sums.get(at).cents() / most;
      if (wide > 0) {
        Rectangle part = new Rectangle(from, line, wide, getHeight() - 2 * line);
        part.getStyleClass().addAll("budget-part", "budget-" + at);
        part.setStrokeWidth(line);
        shapes.add(part);
      }
      from += wide;
    }
    if (budget.limit().cents() > 0) {
      double at = getWidth() * budget.limit().cents() / most;
      Line limit = new Line(at, 0, at, getHeight());
      limit.getStyleClass().add("budget-limit");
      limit.setStrokeWidth(4 * line);
      shapes.add(limit);
    }
    getChildren().setAll(shapes);
  }
}
