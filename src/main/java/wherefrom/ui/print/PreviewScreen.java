package wherefrom.ui.print;

import java.util.Optional;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.job.print.PrintOrder;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TouchKey;

/** The pages of what is to be printed, each as large as the window allows. */
public final class PreviewScreen implements Screen {
  private static final int LONGEST = 1600;

  private final PrintTagsModel model;
  private final SheetView sheet;
  private final TouchKey turn;
  private final VBox view;

  PreviewScreen(ScreenContext context, PrintTagsModel model) {
    this.model = model;
    sheet = Panes.grow(new SheetView(context, LONGEST));
    turn = context.touch().key("Next page", this::turn);
    view = Panes.column(context.scale(), sheet);
    if (!model.pageWords().isEmpty()) {
      view.getChildren().add(turn);
    }
  }

  private void turn() {
    model.turn();
    shown();
  }

  @Override
  public void shown() {
    Optional<PrintOrder> order = model.order(false);
    sheet.show(order, model.page());
    turn.setWords("Next page, after " + model.pageWords());
  }

  @Override
  public String title() {
    return "The pages";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public boolean onJob() {
    return false;
  }
}
