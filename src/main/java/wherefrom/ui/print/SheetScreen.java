package wherefrom.ui.print;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import wherefrom.job.print.Stock;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;

/** A drawn sheet of labels: the first one to use is tapped. */
public final class SheetScreen extends Page {
  private final Stock stock;
  private final int start;
  private final IntConsumer done;

  SheetScreen(ScreenContext context, Stock stock, int start, IntConsumer done) {
    super(context, "Start at which label?", false);
    this.stock = stock;
    this.start = start;
    this.done = done;
    Pager<Integer> rows = Pager.stretched(context.touch(), this::row);
    List<Integer> numbers = new ArrayList<>();
    for (int row = 0; row < stock.rows(); row++) {
      numbers.add(row);
    }
    rows.setItems(numbers);
    Region view =
        Panes.column(context.scale(), context.touch().text("Tap the first label to use."), rows);
    lay(view);
  }

  private Region row(int row) {
    List<Node> labels = new ArrayList<>();
    for (int column = 0; column < stock.columns(); column++) {
      int label = row * stock.columns() + column + 1;
      labels.add(
          context
              .touch()
              .key(
                  Integer.toString(label),
                  () -> {
                    context.navigator().back();
                    done.accept(label);
                    context.navigator().changed();
                  })
              .select(label == start));
    }
    return Panes.grow(Tiles.row(context.scale(), labels.toArray(Node[]::new)));
  }
}
