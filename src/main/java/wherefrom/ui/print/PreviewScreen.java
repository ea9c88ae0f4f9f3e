package wherefrom.ui.print;

import java.util.Optional;
import javafx.scene.layout.Region;
import wherefrom.job.print.PrintOrder;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.Panes;

/** The first page of what is to be printed, as large as the window allows. */
public final class PreviewScreen implements Screen {
  private static final int LONGEST = 1600;

  private final Region view;

  PreviewScreen(Desk desk, Optional<PrintOrder> order) {
    SheetView sheet = Panes.grow(new SheetView(desk, LONGEST));
    sheet.show(order);
    view = Panes.column(desk.scale(), sheet);
  }

  @Override
  public String title() {
    return "The first page";
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
