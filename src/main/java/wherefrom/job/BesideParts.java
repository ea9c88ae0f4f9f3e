package wherefrom.job;

import java.util.Set;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.entry.BagMoved;
import wherefrom.job.entry.BigPartDecided;
import wherefrom.job.entry.BigPartMarked;
import wherefrom.job.entry.BigPartMoved;
import wherefrom.job.entry.BigPartsNamed;
import wherefrom.job.entry.FeatureDecided;
import wherefrom.job.entry.GasketsListed;
import wherefrom.job.entry.PlaceExcused;
import wherefrom.job.entry.PutInService;
import wherefrom.job.entry.RecordReopened;
import wherefrom.job.entry.RunInBegun;
import wherefrom.job.entry.RunInNoted;
import wherefrom.job.entry.RunInStopped;
import wherefrom.job.entry.RunInTakenUp;
import wherefrom.job.entry.SectionClosed;
import wherefrom.job.entry.ServiceDueTyped;
import wherefrom.job.entry.ServiceTicked;
import wherefrom.job.entry.StartTicked;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.entry.UsageNoted;

/** The kinds of entries that change nothing of what rules, looks and readings say of parts. */
final class BesideParts {
  /** They change nothing of what rules, looks and readings say. */
  static final EntryKinds KINDS =
      new EntryKinds(
          Set.of(
              StopGiven.class,
              PlaceExcused.class,
              SectionClosed.class,
              BagFilled.class,
              BagMoved.class,
              BigPartsNamed.class,
              BigPartMoved.class,
              BigPartMarked.class,
              BigPartDecided.class,
              GasketsListed.class,
              FeatureDecided.class,
              StartTicked.class,
              RunInBegun.class,
              RunInNoted.class,
              RunInStopped.class,
              RunInTakenUp.class,
              UsageNoted.class,
              ServiceDueTyped.class,
              ServiceTicked.class,
              PutInService.class,
              RecordReopened.class));

  private BesideParts() {}
}
