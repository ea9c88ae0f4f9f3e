package wherefrom.ui.running;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.Caution;
import wherefrom.job.running.RunInBook;
import wherefrom.job.running.RunInPlan;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.controls.TagKey;

/** How the engine is to be run in, what can hurt, and the key that begins it. */
public final class RunInPlanScreen extends ListPage {
  private final RunInBook book;
  private final RunInFigures.Typed typed;
  private final TagKey tag;

  public RunInPlanScreen(ScreenContext context) {
    super(context, "Run-in");
    book = new RunInBook(context.getJob());
    typed = context.kept().keepOfJob(RunInFigures.Typed.class, RunInFigures.Typed::new);
    tag = tag(this::begin);
    layOut(
        new Foot(
            context,
            tag,
            KeyRow.of(context, act("Service", () -> context.navigator().show(ScreenId.SERVICE)))));
  }

  private RunInPlan plan() {
    return typed.plan().orElseGet(() -> RunInPlan.usual(book.lifters()));
  }

  @Override
  public String aside() {
    int open = book.listOpen().size();
    return open == 0 ? "nothing open" : open + " open";
  }

  /** Nobody turns the key first and reads afterwards what was open. */
  @Override
  protected void refresh() {
    super.refresh();
    if (book.listOpen().isEmpty()) {
      tag.setWords("The engine runs", "");
    } else {
      tag.setWords("See what is open", "before you start it");
    }
  }

  @Override
  protected List<Region> rows() {
    RunInPlan plan = plan();
    List<Region> rows = new ArrayList<>();
    rows.add(
        key(
            plan.words(),
            Words.source(plan.source()) + "." + touch().brief(" Press to type yours.", ""),
            this::askFigures));
    for (Caution caution : Caution.atRunIn()) {
      rows.add(told("Caution", caution.sentence() + " " + Words.source(caution.source()) + "."));
    }
    return rows;
  }

  private void askFigures() {
    new RunInFigures(context, typed).ask();
  }

  /** Where something is open it is shown instead. */
  private void begin() {
    RunInPlan plan = plan();
    List<String> open = new ArrayList<>();
    if (!context.attempt(() -> open.addAll(book.begin(plan, "")))) {
      return;
    }
    if (open.isEmpty()) {
      context.kept().dropOfJob(RunInFigures.Typed.class);
      context.navigator().back();
      RunInScreen.comeUp(context);
    } else {
      open(() -> new RunInHeldScreen(context, plan));
    }
  }
}
