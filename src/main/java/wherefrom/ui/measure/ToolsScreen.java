package wherefrom.ui.measure;

import java.util.List;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.inspection.measure.Tool;
import wherefrom.quantity.Dimension;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;

/** The person's own tools: what they can do, and their zero. */
public final class ToolsScreen implements Screen {
  private final Desk desk;
  private final Pager<Tool> tools;
  private final VBox view;

  public ToolsScreen(Desk desk) {
    this.desk = desk;
    Touch touch = desk.touch();
    tools = Pager.list(touch, this::row);
    Tiles keys =
        Tiles.row(
            desk.scale(),
            touch.primary("List a tool", () -> ToolFlow.list(desk, Dimension.LENGTH)),
            touch.primary(
                touch.brief("List a spring scale", "List a scale"),
                () -> ToolFlow.list(desk, Dimension.FORCE)),
            touch.primary(
                touch.brief("Check a printed pair", "Printed pair"), () -> PairFlow.ask(desk)));
    // Large words leave no room for a line that each tool's own words can do without.
    view =
        touch.isLarge()
            ? Panes.column(desk.scale(), tools, keys)
            : Panes.column(
                desk.scale(),
                touch.text("Press a tool to check its zero. List it again to correct it."),
                tools,
                keys);
  }

  private Region row(Tool tool) {
    String zero =
        desk.state()
            .measures()
            .findZero(tool.name())
            .map(shown -> "Zero checked: it showed " + shown)
            .orElse("Zero not checked yet: press here");
    return ListRow.key(
        desk.touch(),
        tool.name(),
        List.of(ToolFlow.words(tool), zero),
        () -> ToolFlow.zero(desk, tool));
  }

  @Override
  public String title() {
    return "Tools";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    tools.refill(List.copyOf(desk.state().measures().tools()));
  }

  @Override
  public void changed() {
    shown();
  }
}
