package wherefrom.logbook;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import wherefrom.job.entry.Act;
import wherefrom.job.entry.BackFromShop;
import wherefrom.job.entry.BackFromWashing;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.entry.BagMoved;
import wherefrom.job.entry.BigPartDecided;
import wherefrom.job.entry.BigPartMarked;
import wherefrom.job.entry.BigPartMoved;
import wherefrom.job.entry.BigPartsNamed;
import wherefrom.job.entry.BoltChecked;
import wherefrom.job.entry.BoltTightened;
import wherefrom.job.entry.BudgetSet;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.entry.ChangePlanned;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.job.entry.CostDropped;
import wherefrom.job.entry.CostNoted;
import wherefrom.job.entry.DebrisFound;
import wherefrom.job.entry.DecisionMade;
import wherefrom.job.entry.DecisionsAsked;
import wherefrom.job.entry.EngineReopened;
import wherefrom.job.entry.FeatureDecided;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.FiguresKept;
import wherefrom.job.entry.GasketsListed;
import wherefrom.job.entry.GoodsArrived;
import wherefrom.job.entry.GoodsMeasured;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.KindsTracked;
import wherefrom.job.entry.LimitTyped;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.entry.OfferTyped;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartFound;
import wherefrom.job.entry.PartLost;
import wherefrom.job.entry.PartNumberTyped;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.entry.PhotoAdded;
import wherefrom.job.entry.PiecesCounted;
import wherefrom.job.entry.PlaceExcused;
import wherefrom.job.entry.PlanDropped;
import wherefrom.job.entry.PriceNoted;
import wherefrom.job.entry.PutInService;
import wherefrom.job.entry.ReadingsTaken;
import wherefrom.job.entry.RecordReopened;
import wherefrom.job.entry.Reidentified;
import wherefrom.job.entry.RunInBegun;
import wherefrom.job.entry.RunInNoted;
import wherefrom.job.entry.RunInStopped;
import wherefrom.job.entry.RunInTakenUp;
import wherefrom.job.entry.SectionClosed;
import wherefrom.job.entry.SentToShop;
import wherefrom.job.entry.ServiceDueTyped;
import wherefrom.job.entry.ServiceTicked;
import wherefrom.job.entry.SetDecided;
import wherefrom.job.entry.SetHolds;
import wherefrom.job.entry.ShopLineAdded;
import wherefrom.job.entry.ShopLineBack;
import wherefrom.job.entry.SizeTyped;
import wherefrom.job.entry.SlotUnknown;
import wherefrom.job.entry.StartTicked;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.entry.SubjectPhotographed;
import wherefrom.job.entry.TagReissued;
import wherefrom.job.entry.TagsPrinted;
import wherefrom.job.entry.TakenBack;
import wherefrom.job.entry.ToolListed;
import wherefrom.job.entry.TorqueCardBegun;
import wherefrom.job.entry.TorqueCardDropped;
import wherefrom.job.entry.UsageNoted;
import wherefrom.job.entry.ZeroChecked;

/**
 * The names of entries in the file. A name is never changed and never used for anything else; a
 * class may be renamed freely, its components may not: they name the fields of the body.
 *
 * <p>A new kind of entry is one more line here. Its record may hold numbers, text, lists, sets and
 * maps with text keys of these, enums, places, spots, lengths and other records; {@link
 * DomainModule} gives a further type its form. Absent values are an empty text, an empty list or 0.
 */
final class EntryTypes {
  private static final Map<String, Class<? extends JobEntry>> CLASSES = new LinkedHashMap<>();
  private static final Map<Class<? extends JobEntry>, String> NAMES = new LinkedHashMap<>();

  static {
    name("job-opened", JobOpened.class);
    name("kinds-tracked", KindsTracked.class);
    name("tags-printed", TagsPrinted.class);
    name("tag-reissued", TagReissued.class);
    name("pieces-counted", PiecesCounted.class);
    name("part-out", PartOut.class);
    name("part-lost", PartLost.class);
    name("part-found", PartFound.class);
    name("note-added", NoteAdded.class);
    name("photo-added", PhotoAdded.class);
    name("subject-photographed", SubjectPhotographed.class);
    name("off-for-washing", OffForWashing.class);
    name("back-from-washing", BackFromWashing.class);
    name("sent-to-shop", SentToShop.class);
    name("back-from-shop", BackFromShop.class);
    name("look-recorded", LookRecorded.class);
    name("decision-made", DecisionMade.class);
    name("set-decided", SetDecided.class);
    name("decisions-asked", DecisionsAsked.class);
    name("feature-looked", FeatureLooked.class);
    name("change-planned", ChangePlanned.class);
    name("plan-dropped", PlanDropped.class);
    name("change-made", ChangeMade.class);
    name("check-answered", CheckAnswered.class);
    name("slot-unknown", SlotUnknown.class);
    name("tool-listed", ToolListed.class);
    name("zero-checked", ZeroChecked.class);
    name("readings-taken", ReadingsTaken.class);
    name("limit-typed", LimitTyped.class);
    name("size-typed", SizeTyped.class);
    name("debris-found", DebrisFound.class);
    name("reidentified", Reidentified.class);
    name("shop-line-added", ShopLineAdded.class);
    name("shop-line-back", ShopLineBack.class);
    name("cost-noted", CostNoted.class);
    name("cost-dropped", CostDropped.class);
    name("budget-set", BudgetSet.class);
    name("price-noted", PriceNoted.class);
    name("offer-typed", OfferTyped.class);
    name("goods-arrived", GoodsArrived.class);
    name("goods-measured", GoodsMeasured.class);
    name("part-number-typed", PartNumberTyped.class);
    name("set-holds", SetHolds.class);
    name("figures-kept", FiguresKept.class);
    name("torque-card-begun", TorqueCardBegun.class);
    name("bolt-tightened", BoltTightened.class);
    name("bolt-checked", BoltChecked.class);
    name("torque-card-dropped", TorqueCardDropped.class);
    name("part-replaced", PartReplaced.class);
    name("part-fitted", PartFitted.class);
    name("part-unfitted", PartUnfitted.class);
    name("stop-given", StopGiven.class);
    name("place-excused", PlaceExcused.class);
    name("section-closed", SectionClosed.class);
    name("bag-filled", BagFilled.class);
    name("gaskets-listed", GasketsListed.class);
    name("bag-moved", BagMoved.class);
    name("big-parts-named", BigPartsNamed.class);
    name("big-part-moved", BigPartMoved.class);
    name("big-part-marked", BigPartMarked.class);
    name("big-part-decided", BigPartDecided.class);
    name("feature-decided", FeatureDecided.class);
    name("start-ticked", StartTicked.class);
    name("run-in-begun", RunInBegun.class);
    name("run-in-noted", RunInNoted.class);
    name("run-in-stopped", RunInStopped.class);
    name("run-in-taken-up", RunInTakenUp.class);
    name("usage-noted", UsageNoted.class);
    name("service-due-typed", ServiceDueTyped.class);
    name("service-ticked", ServiceTicked.class);
    name("put-in-service", PutInService.class);
    name("record-reopened", RecordReopened.class);
    name("engine-reopened", EngineReopened.class);
    name("taken-back", TakenBack.class);
    name("act", Act.class);
  }

  private EntryTypes() {}

  private static void name(String name, Class<? extends JobEntry> type) {
    if (CLASSES.put(name, type) != null || NAMES.put(type, name) != null) {
      throw new IllegalStateException("named twice: " + name);
    }
  }

  /** The class of entries with this name. */
  static Optional<Class<? extends JobEntry>> find(String name) {
    return Optional.ofNullable(CLASSES.get(name));
  }

  /** The name in the file. */
  static String of(JobEntry entry) {
    String name = NAMES.get(entry.getClass());
    if (name == null) {
      throw new IllegalArgumentException("no name for " + entry.getClass().getSimpleName());
    }
    return name;
  }

  /** Every name with its class, in the order of the table. */
  static Map<String, Class<? extends JobEntry>> all() {
    return Map.copyOf(CLASSES);
  }
}
