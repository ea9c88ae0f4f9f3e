package wherefrom.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import wherefrom.engine.Site;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.entry.DebrisFound;
import wherefrom.job.entry.FeatureLooked;
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
public final class MadeChanges {
  private static final EntryFold<MadeChanges> READS =
      EntryFold.<MadeChanges>none()
          .at(ChangeMade.class, MadeChanges::takeMade)
          .at(LookRecorded.class, MadeChanges::takeLook)
          .at(FeatureLooked.class, MadeChanges::takeLook)
          .at(PartReplaced.class, MadeChanges::takeReplaced)
          .at(PartOut.class, MadeChanges::takeOut)
          .at(SlotUnknown.class, MadeChanges::takeSlot)
          .at(PartLost.class, MadeChanges::takeLost)
          .at(DebrisFound.class, MadeChanges::takeDebris)
          .at(PartFitted.class, MadeChanges::takeFit);

  /** Found on one part, they say nothing of another that may sit in its place. */
  private static final Set<ChangeKind> OF_ONE_PART =
      EnumSet.of(
          ChangeKind.FOOT_WORN,
          ChangeKind.ROLLER_WORN,
          ChangeKind.PUSHROD_BENT,
          ChangeKind.SLOT_UNKNOWN);

  private static final Set<ChangeKind> CAPS =
      EnumSet.of(ChangeKind.CAP_LOST, ChangeKind.CAP_REPLACED);

  private static final Map<PartKind, ChangeKind> REPLACED =
      Map.of(
          PartKind.LIFTER, ChangeKind.LIFTER_REPLACED,
          PartKind.PUSHROD, ChangeKind.PUSHROD_REPLACED,
          PartKind.ROCKER, ChangeKind.ROCKER_REPLACED,
          PartKind.VALVE, ChangeKind.VALVE_REPLACED);

  private final EngineJob job;
  private final ShopChanges shop;
  private final Map<String, MadeChange> changes = new LinkedHashMap<>();

  private MadeChanges(EngineJob job) {
    this.job = job;
    shop = new ShopChanges(job);
  }

  public static List<MadeChange> of(EngineJob job) {
    return job.remember(All.class, state -> new All(List.copyOf(workOut(state)))).changes();
  }

  private record All(List<MadeChange> changes) {}

  private static List<MadeChange> workOut(EngineJob job) {
    MadeChanges made = new MadeChanges(job);
    job.standing().forEach(made::take);
    job.measures().all().forEach(made::take);
    List<MadeChange> all = new ArrayList<>(made.changes.values());
    // What a change means hangs on those before it, in whichever order they were listed.
    all.sort(Comparator.comparingLong(MadeChange::sequence));
    if (all.stream().anyMatch(change -> OneCam.isDecidedBy(change.change().kind()))) {
      all.removeIf(change -> change.change().kind() == ChangeKind.LIFTER_REPLACED);
      all.removeIf(change -> change.change().kind() == ChangeKind.LIFTER_REUSED);
    }
    return all;
  }

  /** The engine as these changes have left it. */
  public static Setting setting(EngineJob job) {
    Setting setting = new Setting(job.layout(), job.places());
    for (MadeChange made : of(job)) {
      setting = setting.after(made.change());
    }
    return setting;
  }

  private void take(LoggedEntry logged) {
    long sequence = logged.sequence();
    shop.take(logged)
        .forEach(change -> takeMade(keyOf("shop ", sequence, change), change, sequence));
    READS.take(this, logged);
  }

  /** One act can bring several changes, also at one place. */
  private static String keyOf(String how, long sequence, Change change) {
    return how + sequence + " " + change.kind() + " " + change.where();
  }

  private void takeMade(ChangeMade made, LoggedEntry logged) {
    takeMade(keyOf("made ", logged.sequence(), made.change()), made.change(), logged.sequence());
  }

  private void takeLook(LookRecorded look, LoggedEntry logged) {
    Part part = job.getPart(look.item()).part();
    String subject = Subject.ofPart(look.item()).key();
    take(subject, look.check(), look.look(), where(part), logged.sequence(), look.item());
  }

  private void takeLook(FeatureLooked look, LoggedEntry logged) {
    String where = Subject.findSite(look.subject()).map(Site::key).orElse("");
    take(look.subject(), look.check(), look.look(), where, logged.sequence(), 0);
  }

  /** Work that was done; a housing that was machined again has its own cap from then on. */
  private void takeMade(String key, Change change, long sequence) {
    put(key, sequence, change, true, 0);
    if (change.kind() == ChangeKind.ROD_RESIZED) {
      Site done = Site.of(change.where());
      removeCaps(
          at ->
              at instanceof Site.BigEnd
                  && (done instanceof Site.Whole || done.findCylinder().equals(at.findCylinder())));
    } else if (change.kind() == ChangeKind.LINE_HONED) {
      removeCaps(Site.Main.class::isInstance);
    }
  }

  private void removeCaps(Predicate<Site> at) {
    changes
        .values()
        .removeIf(made -> CAPS.contains(made.change().kind()) && at.test(made.change().site()));
  }

  private void takeReplaced(PartReplaced replaced, LoggedEntry logged) {
    long sequence = logged.sequence();
    Part old = job.getPart(replaced.oldItem()).part();
    String where = where(old);
    if (old.kind() == PartKind.ROD) {
      removeCaps(Site.of(where)::equals);
      put("rod " + where, sequence, Change.at(ChangeKind.ROD_REPLACED, where), true, 0);
    } else if (old.kind() == PartKind.ROD_CAP || old.kind() == PartKind.MAIN_CAP) {
      // What an earlier cap asked for is nothing to the one that replaced it.
      changes.remove("cap " + where);
      if (!job.pairs().cameWithItsRod(replaced.newItem())) {
        put("cap " + where, sequence, Change.at(ChangeKind.CAP_REPLACED, where), true, 0);
      }
    } else {
      Optional.ofNullable(REPLACED.get(old.kind()))
          .ifPresent(kind -> put(kind + where, sequence, Change.at(kind, where), binds(), 0));
    }
  }

  private void take(MeasuredResult result) {
    if (result.worst() == Look.FAIL) {
      FindingChanges.ofRejected(result.plan().key()).ifPresent(kind -> take(result, kind));
    }
  }

  private void take(MeasuredResult result, ChangeKind kind) {
    String where =
        result
            .subject()
            .match(
                part -> where(job.getPart(part.item()).part()),
                Subject.AFeature::where,
                beside -> "");
    String key = result.subject().key() + " " + result.plan().key();
    int item = result.subject().match(Subject.APart::item, feature -> 0, beside -> 0);
    put(key, result.sequence(), Change.at(kind, where), true, aboutOne(kind, item));
  }

  private void takeSlot(SlotUnknown unknown, LoggedEntry logged) {
    Place home = job.getPart(unknown.item()).part().home();
    Change change = Change.at(ChangeKind.SLOT_UNKNOWN, home.key());
    put("slot " + unknown.item(), logged.sequence(), change, true, unknown.item());
  }

  private void takeLost(PartLost lost, LoggedEntry logged) {
    Part part = job.getPart(lost.item()).part();
    boolean cap = part.kind() == PartKind.MAIN_CAP || part.kind() == PartKind.ROD_CAP;
    if (cap && hasItsRod(lost.item()) && job.whereabouts(lost.item()) == Whereabouts.LOST) {
      Change change = Change.at(ChangeKind.CAP_LOST, where(part));
      put("cap " + lost.item(), logged.sequence(), change, true, 0);
    }
  }

  private void takeDebris(DebrisFound found, LoggedEntry logged) {
    if (found.look().isHarmful()) {
      put("debris", logged.sequence(), Change.of(ChangeKind.DEBRIS_LOOSE), true, 0);
    }
  }

  /** What used lifters ask that go back belongs to them, whatever anybody decides. */
  private void takeOut(PartOut out, LoggedEntry logged) {
    int item = out.item();
    long sequence = logged.sequence();
    if (!changes.containsKey("apart")) {
      put("apart", sequence, Change.of(ChangeKind.TAKEN_APART), false, 0);
    }
    if (!changes.containsKey("lifters")
        && job.getPart(item).part().kind() == PartKind.LIFTER
        && job.whereabouts(item) != Whereabouts.RETIRED) {
      put("lifters", sequence, Change.of(ChangeKind.LIFTER_REUSED), true, 0);
    }
  }

  /** A fit on purpose elsewhere un-mates both places, for as long as it stands. */
  private void takeFit(PartFitted fit, LoggedEntry logged) {
    if (!fit.wasOnPurpose()) {
      return;
    }
    Place home = job.getPart(fit.item()).part().home();
    boolean stands = job.findFittedAt(fit.item()).equals(Optional.of(fit.place()));
    if (stands && !home.equals(fit.place())) {
      for (Place place : List.of(fit.place(), home)) {
        Change change = Change.at(ChangeKind.SWAPPED, place.key());
        put("swap " + place.key(), logged.sequence(), change, binds(), 0);
      }
    }
  }

  private void take(
      String subject, String check, Look look, String where, long sequence, int item) {
    FindingChanges.ofFailed(check)
        .ifPresent(
            kind -> {
              String key = subject + " " + check;
              changes.remove(key);
              boolean meant = kind != ChangeKind.CAP_LOST || hasItsRod(item);
              if (look == Look.FAIL && meant) {
                put(key, sequence, Change.at(kind, where), true, aboutOne(kind, item));
              }
              if (look == Look.SUSPECT) {
                FindingChanges.ofSuspect(check)
                    .ifPresent(doubted -> put(key, sequence, Change.at(doubted, where), true, 0));
              }
            });
  }

  /** The cap of a rod that was replaced is the new rod's no more, lost or not. */
  private boolean hasItsRod(int cap) {
    return job.bench()
        .findLeader(cap)
        .filter(rod -> job.whereabouts(rod.item()) == Whereabouts.RETIRED)
        .isEmpty();
  }

  private static int aboutOne(ChangeKind kind, int item) {
    return OF_ONE_PART.contains(kind) ? item : 0;
  }

  private void put(String key, long sequence, Change change, boolean binding, int about) {
    changes.put(key, new MadeChange(sequence, change, binding, about));
  }

  private boolean binds() {
    return job.inspection().isBegun();
  }

  /** {@code R3} and {@code M2} for a big end and a main, else the spot's key. */
  private static String where(Part part) {
    return Site.around(part.home().spot()).key();
  }
}
