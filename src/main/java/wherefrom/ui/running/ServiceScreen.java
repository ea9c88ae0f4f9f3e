package wherefrom.ui.running;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.running.ServiceBook;
import wherefrom.job.running.Serving;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;

/** What the engine has run, what is due after the run-in, and the way into service. */
public final class ServiceScreen extends ListPage {
  private final Serving serving;
  private final KeyRow keys;

  public ServiceScreen(ScreenContext context) {
    super(context, "Run-in and service");
    serving = new Serving(context.getJob());
    keys = KeyRow.of(context);
    layOut(new Foot(context, touch().tag("Hours or miles", "", this::note), keys));
  }

  private ServiceAsking asking() {
    return new ServiceAsking(context, serving);
  }

  private boolean isInService() {
    return context.state().service().since().isPresent();
  }

  @Override
  public String aside() {
    return isInService() ? "in service" : ServiceWords.due(serving.book());
  }

  @Override
  protected void refresh() {
    super.refresh();
    boolean closed = isInService();
    keys.setActs(
        List.of(
            closed
                ? act("Reopen", () -> asking().reopen())
                : act(touch().brief("Put in service", "In service"), () -> asking().putInService()),
            act("Run-in", () -> context.navigator().show(ScreenId.RUN_IN))));
  }

  @Override
  protected List<Region> rows() {
    ServiceBook book = serving.book();
    List<Region> rows = new ArrayList<>();
    String run = ServiceWords.run(book);
    rows.add(
        run.isEmpty()
            ? told("Nothing noted yet", "Note the hours or miles since the first start.")
            : told("It has run " + run, ServiceWords.due(book)));
    // What is overdue comes first, what is done last.
    book.lines().stream()
        .sorted(Comparator.comparing(ServiceBook.Line::state))
        .forEach(line -> rows.add(line(line)));
    return rows;
  }

  private Region line(ServiceBook.Line line) {
    boolean done = line.state() == ServiceBook.State.DONE;
    List<String> lines = new ArrayList<>();
    lines.add(
        done
            ? line.words().isEmpty() ? "Done" : "Done: " + line.words()
            : Words.capital(line.state().word()) + ", " + line.dueWords());
    if (!done && !touch().isLarge()) {
      lines.add(line.point().how());
    }
    return key(line.point().title(), lines, () -> asking().line(line));
  }

  private void note() {
    asking().note();
  }
}
