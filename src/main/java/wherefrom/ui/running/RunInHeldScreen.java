package wherefrom.ui.running;

import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.running.RunInBook;
import wherefrom.job.running.RunInPlan;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.puttogether.FirstStartScreen;

/** What is open before the engine may run; it begins all the same only for a reason. */
public final class RunInHeldScreen extends ListPage {
  private final RunInBook book;
  private final RunInPlan plan;

  public RunInHeldScreen(ScreenContext context, RunInPlan plan) {
    super(context, "Do not start it yet");
    this.book = new RunInBook(context.getJob());
    this.plan = plan;
    layOut(
        new Foot(
            context,
            touch().tag("Before the first start", "", this::list),
            KeyRow.of(context, act("Begin anyway", this::askWhy))));
  }

  private void list() {
    open(() -> new FirstStartScreen(context));
  }

  @Override
  protected List<Region> rows() {
    return book.listOpen().stream().map(open -> told(open)).toList();
  }

  @Override
  protected String whenEmpty() {
    return "Nothing is open any more. Back, then begin.";
  }

  private void askWhy() {
    open(() -> new TextEntryScreen(context, "Why does it begin anyway?", "", this::begin));
  }

  private void begin(String why) {
    if (why.isBlank()) {
      throw new IllegalArgumentException("Type the reason first.");
    }
    book.begin(plan, why);
    context.kept().dropOfJob(RunInFigures.Typed.class);
    context.navigator().back();
    context.navigator().back();
    RunInScreen.comeUp(context);
  }
}
