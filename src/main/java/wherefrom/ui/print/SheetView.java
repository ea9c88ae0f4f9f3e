package wherefrom.ui.print;

import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.image.Image;
import javafx.scene.layout.Region;
import wherefrom.job.print.PrintOrder;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Images;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.PictureView;

/** A page of what is to be printed, drawn away from the window's thread. */
final class SheetView extends Region {
  private final ScreenContext context;
  private final int longest;
  private final PictureView picture;
  private final double rim;
  private Optional<PrintOrder> shown = Optional.empty();
  private int page;

  /**
   * @param longest of the drawn page, in pixels
   */
  SheetView(ScreenContext context, int longest) {
    this.context = context;
    this.longest = longest;
    rim = Math.ceil(context.scale().px(2));
    picture = Panes.grow(new PictureView(context.touch().small("")));
    getChildren().setAll(picture);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  /** A sheet that is pressed to see it large. */
  static SheetView key(ScreenContext context, int longest, Runnable act) {
    SheetView view = new SheetView(context, longest);
    view.getStyleClass().addAll("key", "plain");
    view.setAccessibleRole(AccessibleRole.BUTTON);
    view.setAccessibleText("the page, large");
    return context.touch().target(view, act);
  }

  /** Draws a page of an order, counted from 1; what was asked for before counts no more. */
  void show(Optional<PrintOrder> order, int number) {
    if (order.isPresent() && order.equals(shown) && number == page) {
      return;
    }
    shown = order;
    page = number;
    if (order.isEmpty()) {
      picture.say("Nothing to print. Press What for other tags and cards.");
      return;
    }
    context.background(
        () -> context.services().printer().preview(order.get(), number, longest).map(Images::of),
        drawn -> drawn(order, number, drawn));
  }

  private void drawn(Optional<PrintOrder> order, int number, Optional<? extends Image> drawn) {
    if (!order.equals(shown) || number != page) {
      return;
    }
    if (drawn.isPresent()) {
      picture.show(drawn.get());
    } else {
      picture.say("No picture: this order cannot be printed on this stock.");
    }
  }

  @Override
  protected double computeMinHeight(double width) {
    return context.scale().px(60);
  }

  @Override
  protected void layoutChildren() {
    Panes.place(picture, rim, rim, getWidth() - 2 * rim, getHeight() - 2 * rim);
  }
}
