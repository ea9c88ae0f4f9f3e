package wherefrom.job.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wherefrom.engine.Spot;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryFold;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.BackFromShop;
import wherefrom.job.entry.BackFromWashing;
import wherefrom.job.entry.DecisionEntry;
import wherefrom.job.entry.DecisionMade;
import wherefrom.job.entry.EngineReopened;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.LookEntry;
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
import wherefrom.job.entry.SetDecided;
import wherefrom.job.pages.RecordEvent;
import wherefrom.parts.Part;
import wherefrom.rules.PartNames;

/**
 * What happened to each cylinder, by day. What happened to many parts alike is counted, what was
 * found or done to one is told.
 */
final class CylinderEvents {
  private static final EntryFold<CylinderEvents> READS =
      EntryFold.<CylinderEvents>none()
          .on(PartOut.class, (events, out) -> events.count(out.item(), "out"))
          .on(PartFitted.class, CylinderEvents::fitted)
          .on(
              PartUnfitted.class,
              (events, it) -> events.tell(it.item(), "taken out again" + why(it.reason())))
          .on(PartReplaced.class, CylinderEvents::replaced)
          .on(DecisionMade.class, CylinderEvents::decided)
          .on(SetDecided.class, CylinderEvents::decided)
          .on(LookRecorded.class, CylinderEvents::looked)
          .on(FeatureLooked.class, CylinderEvents::looked)
          .on(ReadingsTaken.class, CylinderEvents::measured)
          .on(NoteAdded.class, CylinderEvents::noted)
          .on(PartLost.class, (events, lost) -> events.tell(lost.item(), "lost" + why(lost.note())))
          .on(PartFound.class, (events, it) -> events.tell(it.item(), "found again"))
          .on(OffForWashing.class, (events, off) -> events.count(off.item(), "off for washing"))
          .on(BackFromWashing.class, (events, it) -> events.count(it.item(), "back from washing"))
          .on(SentToShop.class, CylinderEvents::sent)
          .on(BackFromShop.class, CylinderEvents::back)
          .on(EngineReopened.class, CylinderEvents::reopened);

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

  CylinderEvents(OpenJob open) {
    this.job = open.state();
    for (LoggedEntry logged : job.standing()) {
      today = open.days().date(logged.time());
      READS.take(this, logged);
    }
  }

  /** Of a cylinder, or with 0 of what belongs to none, the oldest first. */
  List<RecordEvent> of(int cylinder) {
    return days.getOrDefault(cylinder, Map.of()).entrySet().stream()
        .map(one -> new RecordEvent(one.getKey(), one.getValue().words()))
        .toList();
  }

  private void replaced(PartReplaced replaced) {
    int item = replaced.newItem();
    tell(item, "replaced: " + replaced.reason() + ", NEW " + tag(item));
  }

  private void fitted(PartFitted fit) {
    if (fit.wasOnPurpose()) {
      tell(fit.item(), "fitted on purpose: " + fit.onPurpose());
    } else {
      count(fit.item(), "fitted");
    }
  }

  private void decided(DecisionEntry made) {
    made.items().forEach(item -> decided(item, made));
  }

  private void decided(int item, DecisionEntry made) {
    if (made.decision() == Decision.REUSE) {
      count(item, "to reuse");
    } else if (made.items().size() > 1) {
      count(item, "to " + made.decision().word() + why(made.reason()));
    } else {
      tell(item, made.decision().word() + why(made.reason()));
    }
  }

  private static String why(String said) {
    return said.isEmpty() ? "" : ": " + said;
  }

  private void looked(LookEntry look) {
    look.findSubject().ifPresent(at -> looked(at, look.check(), look.look(), look.note()));
  }

  private void measured(ReadingsTaken taken) {
    Subject.find(taken.subject()).ifPresent(at -> count(at, "measured"));
  }

  private void noted(NoteAdded note) {
    if (note.item() > 0) {
      tell(note.item(), note.text());
    } else {
      day(0).told.add(note.text());
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

  private void sent(SentToShop sent) {
    sent.items().forEach(item -> tell(item, "to the machine shop: " + sent.wanted()));
  }

  private void back(BackFromShop back) {
    back.items().forEach(item -> tell(item, "back from the machine shop" + why(back.done())));
  }

  private void reopened(EngineReopened again) {
    day(0).told.add("the engine comes apart again" + why(again.why()));
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
    day(OwnCylinder.cylinder(job, subject)).counted.merge(what, 1, Integer::sum);
  }

  private void tell(int item, String what) {
    tell(Subject.ofPart(item), what);
  }

  private void tell(Subject subject, String what) {
    day(OwnCylinder.cylinder(job, subject)).told.add(name(subject) + ": " + what);
  }

  /** {@code 3 EX pushrod}, {@code 3EX cam lobe}. */
  private String name(Subject subject) {
    return subject.match(part -> name(part.item()), CylinderEvents::name, Subject.Beside::words);
  }

  private String name(int item) {
    Optional<Part> part = job.findPart(item).map(PartRecord::part);
    return part.map(one -> PartNames.NUMBERS.named(one.home())).orElse("" + item);
  }

  private static String name(Subject.AFeature at) {
    String spot = at.site().findSpot().map(Spot::figures).orElse(at.where());
    return (spot + " " + at.feature().word()).strip();
  }
}
