package wherefrom.ui.jobs;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;

/** All jobs of the workshop in a list, with where each was left. */
public final class JobListScreen extends Page {
  private final Pager<JobsModel.Line> list;

  JobListScreen(ScreenContext context, List<JobsModel.Line> jobs, Consumer<Path> open) {
    super(context, "All jobs", false);
    list =
        Pager.list(
            context.touch(),
            job ->
                ListRow.key(
                    context.touch(),
                    job.name(),
                    context.touch().isLarge() ? job.few() : job.lines(),
                    () -> open.accept(job.folder())));
    list.setItems(jobs);
    lay(list);
  }
}
