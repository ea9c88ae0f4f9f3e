package wherefrom.ui.settings;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import wherefrom.files.Outgoing;
import wherefrom.job.OpenJob;
import wherefrom.job.ports.Equipment;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.files.Saving;

/** Saves a report for whoever mends the program: without the job, unless the person wants it in. */
final class ReportSaving {
  private final Desk desk;

  ReportSaving(Desk desk) {
    this.desk = desk;
  }

  /** What goes into a report. */
  private interface Text {
    String of(Equipment equipment) throws IOException;
  }

  void ask() {
    List<Choice<Text>> ways = new ArrayList<>();
    ways.add(
        new Choice<>(
            equipment -> equipment.program().report(),
            "Without any job",
            "version, system and log"));
    desk.job()
        .map(OpenJob::folder)
        .ifPresent(
            job ->
                ways.add(
                    new Choice<>(
                        equipment -> equipment.program().report() + equipment.archives().text(job),
                        "With the open job",
                        "its whole logbook goes along")));
    desk.navigator().open(() -> new ChoiceScreen<>(desk, "Save a report", ways, this::save));
  }

  private void save(Text text) {
    new Saving<>(
            desk,
            "Where to save the report",
            "wherefrom-report.txt",
            out -> write(text, out),
            (Path file, String written) -> desk.say("The report is " + file + "."))
        .ask();
  }

  private String write(Text text, Outgoing out) throws IOException {
    String report = text.of(desk.equipment());
    out.write(stream -> stream.write(report.getBytes(StandardCharsets.UTF_8)));
    return report;
  }
}
