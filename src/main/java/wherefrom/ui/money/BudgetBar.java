package wherefrom.ui.money;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import wherefrom.job.money.Budget;
import wherefrom.quantity.Money;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;

/**
 * The total as a bar, darkest what is paid, and the budget as a thick line across it; below it what
 * each shade is.
 */
final class BudgetBar extends Region {
  private static final double HIGH_MM = 9;
  private static final double SAMPLE_MM = 4.6;
  private static final double SPACE_MM = 1.2;

  /** A shade stands nearer its own name than the name before it. */
  private static final double BETWEEN_MM = 5;

  /** The bar ends a little behind the larger of total and budget. */
  private static final double WHOLE = 1.04;

  /** A share of the total. */
  private record Share(Money money, Rectangle part) {}

  /** A shade, or the budget's line, with its name. */
  private record Named(Rectangle sample, double wide, FitText name) {}

  private final Budget budget;
  private final double high;
  private final double line;
  private final double sampleSide;
  private final double space;
  private final double between;
  private final List<Share> shares = new ArrayList<>();
  private final List<Named> named = new ArrayList<>();
  private final Rectangle limit;

  BudgetBar(Touch touch, Budget budget) {
    this.budget = budget;
    high = touch.scale().px(HIGH_MM);
    line = touch.scale().px(0.5);
    sampleSide = touch.scale().px(SAMPLE_MM);
    space = touch.scale().px(SPACE_MM);
    between = touch.scale().px(BETWEEN_MM);
    limit = part("budget-limit");
    share(touch, 0, budget.paid(), "paid");
    share(touch, 1, budget.committed(), "committed");
    share(touch, 2, budget.quoted(), "quoted");
    share(touch, 3, budget.planned().plus(budget.toBuy()), "to buy");
    share(touch, 4, budget.contingency(), "set aside");
    if (budget.limit().cents() > 0) {
      getChildren().add(limit);
      name(touch, "budget-limit", 4 * line, "budget");
    }
    setMouseTransparent(true);
  }

  private void share(Touch touch, int shade, Money money, String name) {
    if (money.cents() > 0) {
      Share share = new Share(money, part("budget-" + shade));
      shares.add(share);
      getChildren().add(share.part());
      name(touch, "budget-" + shade, sampleSide, name);
    }
  }

  private void name(Touch touch, String styleClass, double wide, String name) {
    Named one = new Named(part(styleClass), wide, touch.small(name));
    named.add(one);
    getChildren().addAll(one.sample(), one.name());
  }

  private Rectangle part(String styleClass) {
    Rectangle part = new Rectangle();
    part.getStyleClass().addAll("budget-part", styleClass);
    part.setStrokeWidth(line);
    return part;
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinHeight(double width) {
    return width <= 0 ? high : Math.ceil(high + names(width, false));
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected double computeMaxHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double most = Math.max(budget.total().cents(), budget.limit().cents()) * WHOLE;
    double from = 0;
    for (Share share : shares) {
      double wide = getWidth() * share.money().cents() / most;
      place(share.part(), from, line, wide, high - 2 * line);
      from += wide;
    }
    double at = getWidth() * budget.limit().cents() / most;
    place(limit, at - 2 * line, line, 4 * line, high - 2 * line);
    names(getWidth(), true);
  }

  private static void place(Rectangle part, double x, double y, double wide, double high) {
    part.setX(x);
    part.setY(y);
    part.setWidth(wide);
    part.setHeight(high);
  }

  /** Names the shades in lines below the bar, or only says how high those are. */
  private double names(double width, boolean places) {
    double x = 0;
    double y = 0;
    double lineHigh = named.isEmpty() ? 0 : named.get(0).name().minHeight(-1);
    for (Named one : named) {
      double wide = one.wide() + space + one.name().leastLineWidth();
      if (x > 0 && x + wide > width) {
        x = 0;
        y += lineHigh;
      }
      if (places) {
        put(one, x, high + y, lineHigh);
      }
      x += wide + between;
    }
    return y + lineHigh;
  }

  private void put(Named one, double x, double y, double lineHigh) {
    place(one.sample(), x, y + (lineHigh - sampleSide) / 2, one.wide(), sampleSide);
    double wide = one.name().leastLineWidth();
    Panes.place(one.name(), x + one.wide() + space, y, wide, lineHigh);
  }
}
