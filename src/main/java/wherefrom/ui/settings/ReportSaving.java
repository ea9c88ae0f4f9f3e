package wherefrom.ui.settings;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import wherefrom.files.Outgoing;
import wherefrom.job.OpenJob;
import wherefrom.job.ports.Services;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.files.Saving;

/** Saves a report for whoever mends the program: without the job, unless the person wants it in. */
final class ReportSaving {
  private final ScreenContext context;

  ReportSaving(ScreenContext context) {
    this.context = context;
  }

  /** What goes into a report. */
  private interface Text {
    String of(Services services) throws IOException;
  }

  void ask() {
    List<Choice<Text>> ways = new ArrayList<>();
    ways.add(
        new Choice<>(
            services -> services.program().report(), "Without any job", "version, system and log"));
    context
        .job()
        .map(OpenJob::folder)
        .ifPresent(
            job ->
                ways.add(
                    new Choice<>(
                        services -> services.program().report() + services.archives().text(job),
                        "With the open job",
                        "its whole logbook goes along")));
    context.navigator().open(() -> new ChoiceScreen<>(context, "Save a report", ways, this::save));
  }

  private void save(Text text) {
    new Saving<>(
            context,
            "Where to save the report",
            "wherefrom-report.txt",
            out -> write(text, out),
            (Path file, String written) -> context.say("The report is " + file + "."))
        .ask();
  }

  private String write(Text text, Outgoing out) throws IOException {
    String report = text.of(context.services());
    out.write(stream -> stream.write(report.getBytes(StandardCharsets.UTF_8)));
    return report;
  }
}
