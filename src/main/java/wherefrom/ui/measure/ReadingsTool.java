package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import wherefrom.inspection.measure.Tool;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;

/** Which tool the readings are taken with, and its zero. */
final class ReadingsTool {
  private final ScreenContext context;
  private final ReadingsModel model;

  ReadingsTool(ScreenContext context, ReadingsModel model) {
    this.context = context;
    this.model = model;
  }

  /** What is shown while no tool is chosen. */
  Region view() {
    boolean none = model.tools().isEmpty();
    String whole =
        none
            ? "Which tool do you measure with? List it once. Its step and its error decide what"
                + " its readings can tell."
            : "Which of your tools do you measure with?";
    TagKey tag = context.touch().tag("", "", this::choose);
    tag.setWords(none ? "List a tool" : "Choose the tool", "");
    String said = context.touch().brief(whole, "Which tool do you measure with?");
    return Panes.column(
        context.scale(),
        Panes.grow(context.touch().text(said)),
        new Foot(context, tag, KeyRow.of(context)));
  }

  void zero() {
    model.tool().ifPresent(tool -> ToolFlow.zero(context, tool));
  }

  void choose() {
    if (model.tools().isEmpty()) {
      ToolFlow.list(context, model.plan().units());
      return;
    }
    Optional<Tool> now = model.tool();
    List<Choice<Optional<Tool>>> choices = new ArrayList<>();
    for (Tool tool : model.tools()) {
      choices.add(new Choice<>(Optional.of(tool), tool.name(), ToolFlow.words(tool)));
    }
    choices.add(new Choice<>(Optional.empty(), "Another tool", "list it first"));
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context,
                    "Which tool?",
                    now.isEmpty() ? choices : Choice.now(choices, now),
                    this::chosen));
  }

  private void chosen(Optional<Tool> tool) {
    if (tool.isPresent()) {
      model.choose(tool.get());
    } else {
      ToolFlow.list(context, model.plan().units());
    }
    context.navigator().changed();
  }
}
