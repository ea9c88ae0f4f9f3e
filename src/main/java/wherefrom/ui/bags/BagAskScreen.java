package wherefrom.ui.bags;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.scene.layout.Region;
import wherefrom.job.bags.BagOutcome;
import wherefrom.text.UsualWords;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.TagKey;

/** Something speaks against a deed: it is left, or done all the same for a reason. */
public final class BagAskScreen extends ListPage {
  private final String sentence;
  private final UsualWords reasons;
  private final Function<String, BagOutcome> deed;
  private final BagAnswers answers;

  BagAskScreen(
      ScreenContext context,
      String sentence,
      UsualWords reasons,
      Function<String, BagOutcome> deed,
      BagAnswers answers) {
    super(context, "What comes first");
    this.sentence = sentence;
    this.reasons = reasons;
    this.deed = deed;
    this.answers = answers;
    TagKey leave = tag(context.navigator()::back);
    leave.setWords("Leave it", touch().brief("nothing is logged", ""));
    layOut(leave);
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>(List.of(told(sentence, "")));
    for (String reason : reasons.usual()) {
      rows.add(key("Log it: " + reason, List.of(), () -> log(reason)));
    }
    rows.add(key("Log it: " + reasons.own() + "…", List.of(), this::words));
    return rows;
  }

  private void log(String reason) {
    context.navigator().back();
    answers.forReason(reason, deed);
  }

  private void words() {
    open(
        () ->
            new TextEntryScreen(
                context,
                "Why?",
                "",
                typed -> {
                  if (!typed.isBlank()) {
                    log(typed);
                  }
                }));
  }
}
