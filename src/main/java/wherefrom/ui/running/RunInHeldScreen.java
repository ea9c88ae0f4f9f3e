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
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.puttogether.FirstStartScreen;

/** What is open before the engine may run; it begins all the same only for a reason. */
public final class RunInHeldScreen extends ListPage {
  private final RunInBook book;
  private final RunInPlan plan;
  private final RunInFigures.Typed typed;
  private final TagKey tag;

  public RunInHeldScreen(ScreenContext context, RunInPlan plan) {
    super(context, "Do not start it yet");
    this.book = new RunInBook(context.getJob());
    this.plan = plan;
    this.typed = context.kept().keepOfJob(RunInFigures.Typed.class, RunInFigures.Typed::new);
    this.tag = tag(this::press);
    layOut(new Foot(context, tag, KeyRow.of(context, act("Begin anyway", this::askWhy))));
  }

  /** The reason comes before the key is turned; the clock begins by a press of its own. */
  @Override
  protected void refresh() {
    super.refresh();
    if (typed.anyway().isEmpty()) {
      tag.setWords("Before the first start", "");
    } else {
      tag.setWords("The engine runs", typed.anyway());
    }
  }

  private void press() {
    if (typed.anyway().isEmpty()) {
      list();
    } else if (context.attempt(() -> book.begin(plan, typed.anyway()))) {
      begun();
    }
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
    open(
        () ->
            new TextEntryScreen(context, "Why does it begin anyway?", typed.anyway(), this::begin));
  }

  private void begin(String why) {
    if (why.isBlank()) {
      throw new IllegalArgumentException("Type the reason first.");
    }
    typed.anyway(why.strip());
    context.navigator().changed();
  }

  private void begun() {
    context.kept().dropOfJob(RunInFigures.Typed.class);
    context.navigator().back();
    context.navigator().back();
    RunInScreen.comeUp(context);
  }
}
