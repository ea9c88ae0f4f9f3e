package wherefrom.ui.tray;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.Unread;
import wherefrom.job.tags.JobNames;
import wherefrom.job.tray.PictureMark;
import wherefrom.job.tray.Tray;
import wherefrom.job.tray.TrayCheck;
import wherefrom.job.tray.TrayOut;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.Cue;
import wherefrom.rules.PartNames;
import wherefrom.text.Words;

/** What one photograph of a tray says, and what can be done about it. */
final class TrayModel {

  /** A line of the list: what it is, and what is so with it where the tag does not say it. */
  record Line(String heading, String words) {}

  private final OpenJob job;
  private final JobNames names;
  private final Reading reading;
  private final TrayPurpose purpose;
  private String said = "";

  TrayModel(OpenJob job, JobNames names, Reading reading, TrayPurpose purpose) {
    this.job = job;
    this.names = names;
    this.reading = reading;
    this.purpose = purpose;
  }

  private Tray tray() {
    return Tray.of(job.state(), names, reading);
  }

  List<PictureMark> marks() {
    return PictureMark.of(tray());
  }

  /** How many tags were read. */
  String aside() {
    return Words.count(tray().parts().size(), "tag") + " read";
  }

  /** What was found, in a sentence or two; after logging, what was logged. */
  String headline() {
    Tray tray = tray();
    if (!said.isEmpty()) {
      return said;
    }
    if (tray.parts().isEmpty()) {
      return "No part's tag was read on this picture." + unread(tray);
    }
    return purpose == TrayPurpose.OUT ? toLog(tray) + unread(tray) : checked(tray) + unread(tray);
  }

  private static String toLog(Tray tray) {
    int due = tray.toLog().size();
    int left = tray.parts().size() - due;
    if (due == 0) {
      return "Nothing to log: " + left + " are out already.";
    }
    return Words.count(due, "part")
        + " to log as out"
        + (left == 0 ? "." : "; " + left + " out already.");
  }

  private String checked(Tray tray) {
    TrayCheck check = TrayCheck.of(job.state(), tray);
    return check.agrees()
        ? "As recorded: all " + check.right().size() + ", and no other of these kinds is out."
        : "As recorded: "
            + check.right().size()
            + ". Elsewhere: "
            + check.elsewhere().size()
            + ". Out, not here: "
            + check.absent().size()
            + ".";
  }

  private static String unread(Tray tray) {
    int count = tray.unread().size();
    return count == 0 ? "" : " " + Words.count(count, "tag") + " not read: the broken lines.";
  }

  /** What needs a person first, then the rest. */
  List<Line> lines() {
    Tray tray = tray();
    List<Line> lines = new ArrayList<>();
    if (purpose == TrayPurpose.OUT) {
      tray.toLog().forEach(part -> lines.add(new Line(title(part), "")));
      addOthers(tray, lines);
      tray.parts().stream()
          .map(Tray.Lying::part)
          .filter(part -> part.where() != Whereabouts.IN_ENGINE)
          .forEach(part -> lines.add(new Line(title(part), part.where().words())));
      return lines;
    }
    TrayCheck check = TrayCheck.of(job.state(), tray);
    for (Tray.Lying lying : check.elsewhere()) {
      String where = lying.part().where().words();
      lines.add(new Line(title(lying.part()), "here, recorded as " + where));
    }
    check.absent().forEach(part -> lines.add(new Line(title(part), "out, not here")));
    addOthers(tray, lines);
    check.right().forEach(lying -> lines.add(new Line(title(lying.part()), "as recorded")));
    if (!check.otherKinds().isEmpty()) {
      lines.add(new Line("Other kinds that are out", check.otherWords()));
    }
    return lines;
  }

  /** {@code 3 EX pushrod}. */
  private static String title(PartRecord record) {
    return Words.capital(PartNames.NUMBERS.named(record.part().home()));
  }

  private static void addOthers(Tray tray, List<Line> lines) {
    for (Unread unread : tray.unread()) {
      lines.add(new Line("A tag that was not read", unread.cause().hint()));
    }
    tray.others().forEach(other -> lines.add(new Line("Another code", other.words())));
  }

  /** What the key says that logs; empty where there is nothing to log. */
  Optional<String> findLogWords() {
    int due = tray().toLog().size();
    return due == 0 || purpose == TrayPurpose.CHECK
        ? Optional.empty()
        : Optional.of("Log " + Words.count(due, "part") + " as out");
  }

  /** Logs them all, each a step of its own. */
  Cue log() {
    int logged = new TrayOut(job).log(tray()).size();
    said = Words.count(logged, "part") + " logged as out. UNDO takes them back one by one.";
    return Cue.RIGHT;
  }

  /** The job has changed elsewhere, as by an undo. */
  void changed() {
    said = "";
  }
}
