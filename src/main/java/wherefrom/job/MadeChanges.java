package wherefrom.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.engine.MainSpot;
import wherefrom.engine.RodSpot;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.entry.DebrisFound;
import wherefrom.job.entry.DecisionEntry;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartLost;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.SlotUnknown;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.OneCam;
import wherefrom.rules.consequence.Setting;

/** The changes that stand: those recorded, and those that looks and fits amount to. */
final class MadeChanges {
  /** A failed answer to these checks is a finding that has rules of its own. */
  private static final Map<String, ChangeKind> FAILED =
      Map.of(
          "rod-shell-face", ChangeKind.BEARING_FAILED,
          "main-shell-face", ChangeKind.BEARING_FAILED,
          "pushrod-roll", ChangeKind.PUSHROD_BENT,
          "lobe-look", ChangeKind.LOBE_FAILED,
          "lifter-foot", ChangeKind.FOOT_WORN,
          "stud-line", ChangeKind.STUD_MOVED,
          "gear-teeth", ChangeKind.PLASTIC_GEAR_BROKEN);

  /** A rejected reading by these plans is one, too. */
  private static final Map<String, ChangeKind> REJECTED =
      Map.of(
          "lifter-crown", ChangeKind.FOOT_WORN,
          "pushrod-runout", ChangeKind.PUSHROD_BENT,
          "lobe-lift", ChangeKind.LOBE_FAILED);

  private static final Map<PartKind, ChangeKind> REPLACED =
      Map.of(
          PartKind.LIFTER, ChangeKind.LIFTER_REPLACED,
          PartKind.PUSHROD, ChangeKind.PUSHROD_REPLACED,
          PartKind.ROCKER, ChangeKind.ROCKER_REPLACED,
          PartKind.VALVE, ChangeKind.VALVE_REPLACED);

  private final EngineJob job;
  private final Map<String, MadeChange> changes = new LinkedHashMap<>();

  private MadeChanges(EngineJob job) {
    this.job = job;
  }

  static List<MadeChange> of(EngineJob job) {
    MadeChanges made = new MadeChanges(job);
    job.standing().forEach(made::take);
    job.measures().all().forEach(made::take);
    List<MadeChange> all = new ArrayList<>(made.changes.values());
    if (all.stream().anyMatch(change -> OneCam.isDecidedBy(change.change().kind()))) {
      all.removeIf(change -> change.change().kind() == ChangeKind.LIFTER_REPLACED);
      all.removeIf(change -> change.change().kind() == ChangeKind.LIFTER_REUSED);
    }
    return all;
  }

  /** The engine as these changes have left it. */
  static Setting setting(EngineJob job) {
    Setting setting = new Setting(job.layout(), job.places());
    for (MadeChange made : of(job)) {
      setting = setting.after(made.change());
    }
    return setting;
  }

  private void take(LoggedEntry logged) {
    JobEntry entry = logged.entry();
    long sequence = logged.sequence();
    if (entry instanceof ChangeMade made) {
      Change change = new Change(made.change(), made.where(), made.detail());
      put("made " + sequence, sequence, change, true);
    } else if (entry instanceof LookRecorded look) {
      Part part = job.getPart(look.item()).part();
      take(Subject.ofPart(look.item()).key(), look.check(), look.look(), where(part), sequence);
    } else if (entry instanceof FeatureLooked look) {
      String where = look.subject().substring(look.subject().indexOf('@') + 1);
      take(look.subject(), look.check(), look.look(), where, sequence);
    } else if (entry instanceof PartReplaced replaced) {
      Part old = job.getPart(replaced.oldItem()).part();
      changes.remove(ChangeKind.LIFTER_REUSED + where(old));
      Optional.ofNullable(REPLACED.get(old.kind()))
          .ifPresent(
              kind -> put(kind + where(old), sequence, Change.at(kind, where(old)), wanted()));
    } else {
      takeWhereabouts(entry, sequence);
    }
  }

  private void take(MeasuredResult result) {
    ChangeKind kind = REJECTED.get(result.plan().key());
    if (kind != null && result.worst() == Look.FAIL) {
      String where =
          result.subject() instanceof Subject.AFeature feature
              ? feature.where()
              : where(job.getPart(((Subject.APart) result.subject()).item()).part());
      String key = result.subject().key() + " " + result.plan().key();
      put(key, result.sequence(), Change.at(kind, where), true);
    }
  }

  private void takeWhereabouts(JobEntry entry, long sequence) {
    if (entry instanceof PartOut) {
      changes.putIfAbsent(
          "apart", new MadeChange(sequence, Change.of(ChangeKind.TAKEN_APART), false));
    } else if (entry instanceof SlotUnknown unknown) {
      Place home = job.getPart(unknown.item()).part().home();
      Change change = Change.at(ChangeKind.SLOT_UNKNOWN, home.key());
      put("slot " + unknown.item(), sequence, change, true);
    } else if (entry instanceof PartLost lost) {
      Part part = job.getPart(lost.item()).part();
      boolean cap = part.kind() == PartKind.MAIN_CAP || part.kind() == PartKind.ROD_CAP;
      if (cap && job.whereabouts(lost.item()) == Whereabouts.LOST) {
        put("cap " + lost.item(), sequence, Change.at(ChangeKind.CAP_LOST, where(part)), true);
      }
    } else if (entry instanceof DebrisFound found && found.look().isHarmful()) {
      put("debris", sequence, Change.of(ChangeKind.DEBRIS_LOOSE), true);
    } else if (entry instanceof PartFitted fit) {
      takeFit(fit, sequence);
    } else if (entry instanceof DecisionEntry made) {
      made.items().forEach(item -> takeDecision(item, made.decision(), sequence));
    }
  }

  private void takeDecision(int item, Decision decision, long sequence) {
    Part part = job.getPart(item).part();
    boolean reused = decision == Decision.REUSE && !part.fresh();
    String key = ChangeKind.LIFTER_REUSED + where(part);
    if (part.kind() == PartKind.LIFTER && reused) {
      put(key, sequence, Change.at(ChangeKind.LIFTER_REUSED, where(part)), true);
    } else if (part.kind() == PartKind.LIFTER) {
      changes.remove(key);
    }
  }

  /** A fit on purpose elsewhere un-mates both places, for as long as it stands. */
  private void takeFit(PartFitted fit, long sequence) {
    Place home = job.getPart(fit.item()).part().home();
    boolean stands = job.findFittedAt(fit.item()).equals(Optional.of(fit.place()));
    if (fit.wasOnPurpose() && stands && !home.equals(fit.place())) {
      for (Place place : List.of(fit.place(), home)) {
        Change change = Change.at(ChangeKind.SWAPPED, place.key());
        put("swap " + place.key(), sequence, change, wanted());
      }
    }
  }

  private void take(String subject, String check, Look look, String where, long sequence) {
    ChangeKind kind = FAILED.get(check);
    if (kind != null) {
      String key = subject + " " + check;
      changes.remove(key);
      if (look == Look.FAIL) {
        put(key, sequence, Change.at(kind, where), true);
      }
    }
  }

  private void put(String key, long sequence, Change change, boolean binding) {
    changes.put(key, new MadeChange(sequence, change, binding));
  }

  private boolean wanted() {
    return job.decisionsWanted();
  }

  /** {@code R3} and {@code M2} for a big end and a main, else the spot's key. */
  private static String where(Part part) {
    if (part.home().spot() instanceof RodSpot rod) {
      return "R" + rod.cylinder();
    }
    return part.home().spot() instanceof MainSpot main
        ? "M" + main.number()
        : part.home().spot().key();
  }
}
