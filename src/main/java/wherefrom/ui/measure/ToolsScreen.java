package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import wherefrom.inspection.measure.Tool;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.UnitChoice;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.TagKey;

/** The person's own tools: what they can do, and their zero. */
public final class ToolsScreen extends ListPage {
  private final TagKey tag;
  private final KeyRow keys;

  public ToolsScreen(ScreenContext context) {
    super(context, "Tools");
    tag = tag(() -> unchecked().ifPresentOrElse(tool -> ToolFlow.zero(context, tool), this::list));
    keys = KeyRow.of(context);
    layOut(new Foot(context, tag, keys));
  }

  private List<Tool> tools() {
    return List.copyOf(context.state().measures().tools());
  }

  private Optional<Tool> unchecked() {
    return tools().stream()
        .filter(tool -> context.state().measures().findZero(tool.name()).isEmpty())
        .findFirst();
  }

  private void list() {
    ToolFlow.list(context, UnitChoice.of(Dimension.LENGTH));
  }

  @Override
  public String aside() {
    return tools().size() + " listed";
  }

  @Override
  protected String whenEmpty() {
    return "List each tool once. Its step and its error decide what its readings can tell.";
  }

  @Override
  protected void refresh() {
    super.refresh();
    Optional<Tool> next = unchecked();
    tag.setWords(next.map(tool -> "Check zero: " + tool.name()).orElse("List a tool"), "");
    List<KeyRow.Act> acts = new ArrayList<>();
    if (next.isPresent()) {
      acts.add(act("List a tool", this::list));
    }
    acts.add(act("Check a printed pair", () -> PairFlow.ask(context)));
    acts.add(act("List a gram scale", () -> ToolFlow.list(context, UnitChoice.of(Dimension.MASS))));
    acts.add(
        act("List a spring scale", () -> ToolFlow.list(context, UnitChoice.of(Dimension.FORCE))));
    keys.setActs(acts);
  }

  @Override
  protected List<Region> rows() {
    return tools().stream().map(this::row).toList();
  }

  private Region row(Tool tool) {
    String zero =
        context
            .state()
            .measures()
            .findZero(tool.name())
            .map(shown -> "Zero checked: it showed " + shown)
            .orElse("Zero not checked yet: press here");
    List<String> lines = touch().isLarge() ? List.of() : List.of(ToolFlow.words(tool), zero);
    return key(tool.name(), lines, () -> ToolFlow.zero(context, tool));
  }
}
