package wherefrom.job.entry;

import java.util.List;
import java.util.Optional;

/**
 * One thing that happened in a job. Entries are never changed or removed; the job's state is the
 * fold over them. A kind of entry keeps its meaning for ever: files of today must be read in years.
 */
public sealed interface JobEntry
    permits JobOpened,
        KindsTracked,
        TagsPrinted,
        TagReissued,
        PiecesCounted,
        PartOut,
        PartLost,
        PartFound,
        NoteAdded,
        PhotoAdded,
        SubjectPhotographed,
        OffForWashing,
        BackFromWashing,
        SentToShop,
        BackFromShop,
        LookRecorded,
        DecisionMade,
        SetDecided,
        DecisionsAsked,
        FeatureLooked,
        ChangePlanned,
        PlanDropped,
        ChangeMade,
        CheckAnswered,
        SlotUnknown,
        ToolListed,
        ZeroChecked,
        ReadingsTaken,
        LimitTyped,
        SizeTyped,
        DebrisFound,
        Reidentified,
        ShopLineAdded,
        ShopLineBack,
        CostNoted,
        CostDropped,
        BudgetSet,
        PriceNoted,
        OfferTyped,
        GoodsArrived,
        GoodsMeasured,
        PartNumberTyped,
        SetHolds,
        FiguresKept,
        TorqueCardBegun,
        BoltTightened,
        BoltChecked,
        TorqueCardDropped,
        PartReplaced,
        PartFitted,
        PartUnfitted,
        StopGiven,
        PlaceExcused,
        SectionClosed,
        BagFilled,
        BagMoved,
        BigPartsNamed,
        BigPartMoved,
        BigPartMarked,
        BigPartDecided,
        FeatureDecided,
        StartTicked,
        RunInBegun,
        RunInNoted,
        RunInStopped,
        RunInTakenUp,
        UsageNoted,
        ServiceDueTyped,
        ServiceTicked,
        PutInService,
        RecordReopened,
        EngineReopened,
        GasketsListed,
        TakenBack,
        Act {

  /** Whether the entry can be taken back. What was printed or opened cannot: it exists outside. */
  default boolean canBeTakenBack() {
    return true;
  }

  /** The sequence of the entry that this one takes back; empty where it takes none back. */
  default Optional<Long> findTakenBack() {
    return Optional.empty();
  }

  /** What it says, entry by entry. */
  default List<JobEntry> each() {
    return List.of(this);
  }
}
