package wherefrom.job.record;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wherefrom.engine.Spots;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.LoggedEntry;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.BackFromShop;
import wherefrom.job.entry.BackFromWashing;
import wherefrom.job.entry.DecisionEntry;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartFound;
import wherefrom.job.entry.PartLost;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.entry.ReadingsTaken;
import wherefrom.job.entry.SentToShop;
import wherefrom.job.pages.RecordEvent;
import wherefrom.parts.Part;

/**
 * What happened to each cylinder, by day. What happened to many parts alike is counted, what was
 * found or done to one is told.
 */
final class CylinderEvents {

  /** One day: what is told by itself, and how many parts had what is counted. */
  private static final class Day {
    private final List<String> told = new ArrayList<>();
    private final Map<String, Integer> counted = new LinkedHashMap<>();

    private List<String> words() {
      List<String> words = new ArrayList<>(told);
      counted.forEach((what, many) -> words.add(many + " " + what));
      return words;
    }
  }

  private final EngineJob job;
  private final Map<Integer, Map<LocalDate, Day>> days = new LinkedHashMap<>();
  private LocalDate today = LocalDate.EPOCH;

  CylinderEvents(EngineJob job) {
    this.job = job;
    for (LoggedEntry logged : job.standing()) {
      today = LocalDate.ofInstant(logged.time(), ZoneOffset.UTC);
      take(logged.entry());
    }
  }

  /** Of a cylinder, or with 0 of what belongs to none, the oldest first. */
  List<RecordEvent> of(int cylinder) {
    return days.getOrDefault(cylinder, Map.of()).entrySet().stream()
        .map(one -> new RecordEvent(one.getKey(), one.getValue().words()))
        .toList();
  }

  private void take(JobEntry entry) {
    if (entry instanceof PartOut out) {
      count(out.item(), "out");
    } else if (entry instanceof PartFitted fit) {
      fitted(fit);
    } else if (entry instanceof PartUnfitted out) {
      tell(out.item(), "taken out again");
    } else if (entry instanceof PartReplaced replaced) {
      tell(
          replaced.newItem(),
          "replaced: " + replaced.reason() + ", NEW " + tag(replaced.newItem()));
    } else if (entry instanceof DecisionEntry made) {
      made.items().forEach(item -> decided(item, made));
    } else {
      found(entry);
    }
  }

  private void fitted(PartFitted fit) {
    if (fit.wasOnPurpose()) {
      tell(fit.item(), "fitted on purpose: " + fit.onPurpose());
    } else {
      count(fit.item(), "fitted");
    }
  }

  private void decided(int item, DecisionEntry made) {
    if (made.decision() == Decision.REUSE) {
      count(item, "to reuse");
    } else if (made.items().size() > 1) {
      count(item, "to " + made.decision().word() + reason(made));
    } else {
      tell(item, made.decision().word() + reason(made));
    }
  }

  private static String reason(DecisionEntry made) {
    return made.reason().isEmpty() ? "" : ": " + made.reason();
  }

  private void found(JobEntry entry) {
    if (entry instanceof LookRecorded look) {
      looked(Subject.ofPart(look.item()), look.check(), look.look(), look.note());
    } else if (entry instanceof FeatureLooked look) {
      Subject.find(look.subject())
          .ifPresent(at -> looked(at, look.check(), look.look(), look.note()));
    } else if (entry instanceof ReadingsTaken taken) {
      Subject.find(taken.subject()).ifPresent(at -> count(at, "measured"));
    } else if (entry instanceof NoteAdded note && note.item() > 0) {
      tell(note.item(), note.text());
    } else if (entry instanceof NoteAdded note) {
      day(0).told.add(note.text());
    } else {
      away(entry);
    }
  }

  private void looked(Subject subject, String check, Look look, String note) {
    if (look == Look.SUSPECT || look == Look.FAIL) {
      String title = Checks.find(check).map(found -> found.title()).orElse(check);
      tell(subject, look.word() + ", " + (note.isEmpty() ? title : note));
    } else if (look == Look.PASS) {
      count(subject, "passed a look");
    }
  }

  private void away(JobEntry entry) {
    if (entry instanceof PartLost lost) {
      tell(lost.item(), "lost");
    } else if (entry instanceof PartFound turned) {
      tell(turned.item(), "found again");
    } else if (entry instanceof OffForWashing off) {
      count(off.item(), "off for washing");
    } else if (entry instanceof BackFromWashing back) {
      count(back.item(), "back from washing");
    } else if (entry instanceof SentToShop sent) {
      sent.items().forEach(item -> tell(item, "to the machine shop: " + sent.wanted()));
    } else if (entry instanceof BackFromShop back) {
      back.items().forEach(item -> tell(item, "back from the machine shop" + done(back)));
    }
  }

  private static String done(BackFromShop back) {
    return back.done().isEmpty() ? "" : ": " + back.done();
  }

  private String tag(int item) {
    return job.findPart(item).map(record -> record.part().code(job.engine()).typed()).orElse("");
  }

  private Day day(int cylinder) {
    return days.computeIfAbsent(cylinder, key -> new TreeMap<>())
        .computeIfAbsent(today, key -> new Day());
  }

  private void count(int item, String what) {
    count(Subject.ofPart(item), what);
  }

  private void count(Subject subject, String what) {
    day(Belonging.cylinder(job, subject)).counted.merge(what, 1, Integer::sum);
  }

  private void tell(int item, String what) {
    tell(Subject.ofPart(item), what);
  }

  private void tell(Subject subject, String what) {
    day(Belonging.cylinder(job, subject)).told.add(name(subject) + ": " + what);
  }

  /** {@code 3 EX pushrod}, {@code 3EX cam lobe}. */
  private String name(Subject subject) {
    if (subject instanceof Subject.AFeature at) {
      String spot = Spots.find(at.where()).map(each -> each.figures()).orElse(at.where());
      return (spot + " " + at.feature().word()).strip();
    }
    int item = ((Subject.APart) subject).item();
    Optional<Part> part = job.findPart(item).map(PartRecord::part);
    return part.map(one -> one.home().figures() + " " + one.kind().word()).orElse("" + item);
  }
}
