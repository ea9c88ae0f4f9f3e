package wherefrom.ui.print;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
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
  private final int start;
  private final IntConsumer done;

  SheetScreen(ScreenContext context, Stock stock, int start, IntConsumer done) {
    super(context, "Start at which label?", false);
    this.start = start;
    this.done = done;
    Pager<List<Integer>> rows = Pager.stretched(context.touch(), this::row);
    List<List<Integer>> labels = new ArrayList<>();
    for (int row = 0; row < stock.rows(); row++) {
      int before = row * stock.columns();
      labels.add(IntStream.rangeClosed(before + 1, before + stock.columns()).boxed().toList());
    }
    rows.setItems(labels);
    Region view =
        Panes.column(context.scale(), context.touch().text("Tap the first label to use."), rows);
    lay(view);
  }

  private Region row(List<Integer> numbers) {
    List<Node> labels = new ArrayList<>();
    for (int label : numbers) {
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
