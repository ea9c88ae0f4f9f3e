package wherefrom.ui.print;

import java.util.Optional;
import javafx.scene.layout.Region;
import wherefrom.job.print.PrintOrder;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Split;
import wherefrom.ui.controls.TouchKey;

/** The pages of what is to be printed, each as large as the window allows. */
public final class PreviewScreen extends Page {
  private static final int LONGEST = 1600;

  private final PrintTagsModel model;
  private final SheetView sheet;
  private final TouchKey turn;

  PreviewScreen(ScreenContext context, PrintTagsModel model) {
    super(context, "The pages", false);
    this.model = model;
    sheet = Panes.grow(new SheetView(context, LONGEST));
    turn = context.touch().key("Next page", this::turn);
    Region below = Panes.column(context.scale(), Panes.space(), turn);
    lay(model.pageWords().isEmpty() ? sheet : new Split(context.scale(), sheet, below));
  }

  private void turn() {
    model.turn();
    shown();
  }

  @Override
  protected void refresh() {
    Optional<PrintOrder> order = model.order(false);
    sheet.show(order, model.page());
    turn.setWords("Page " + model.pageWords() + ": next");
  }
}
