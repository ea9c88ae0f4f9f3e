package wherefrom.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartLost;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.entry.SentToShop;
import wherefrom.job.entry.StopGiven;
import wherefrom.parts.Place;
import wherefrom.rules.VerdictName;

/**
 * The stops that wait: the fold over the entries that give one and that end one. A stop waits until
 * its part is judged again, fitted or put away, or its very place is filled with another part, at
 * whatever bench; a part that is fitted elsewhere says nothing of it. A tag that stood for no part
 * is answered by the next fit at its own bench.
 */
public final class Stops {
  private static final EntryFold<Stops> READS =
      EntryFold.<Stops>none()
          .at(StopGiven.class, Stops::give)
          .at(PartFitted.class, Stops::fitted)
          .on(PartUnfitted.class, Stops::unfit)
          .on(PartOut.class, (stops, out) -> stops.end(isOf(out.item())))
          .on(PartLost.class, (stops, lost) -> stops.end(isOf(lost.item())))
          .on(OffForWashing.class, (stops, off) -> stops.end(isOf(off.item())))
          .on(SentToShop.class, (stops, sent) -> sent.items().forEach(it -> stops.end(isOf(it))))
          .on(PartReplaced.class, (stops, it) -> stops.end(isOf(it.oldItem())));

  private final PartsLedger parts;
  private final List<LoggedEntry> waiting = new ArrayList<>();

  Stops(PartsLedger parts) {
    this.parts = parts;
  }

  /**
   * As another is now; what changes in one of them later does not in the other.
   *
   * @param parts the same job's, which go their own way with it
   */
  Stops(Stops other, PartsLedger parts) {
    this(parts);
    waiting.addAll(other.waiting);
  }

  void apply(LoggedEntry logged) {
    READS.take(this, logged);
  }

  /** Those that wait, oldest first; each entry is a {@link StopGiven}. */
  public List<LoggedEntry> waiting() {
    return List.copyOf(waiting);
  }

  /** The one that was given last, at whatever bench; empty when none waits. */
  public Optional<LoggedEntry> last() {
    return waiting.stream().reduce((earlier, later) -> later);
  }

  /** The one that was given last at a bench; empty when none waits there. */
  public Optional<LoggedEntry> lastAt(int bench) {
    return waiting.stream().filter(isAt(bench)).reduce((earlier, later) -> later);
  }

  /** Those of a part, at whatever bench they were given. */
  public List<LoggedEntry> of(int item) {
    return waiting.stream().filter(it -> stop(it).item() == item).toList();
  }

  /** Those of the tags that stood for no part, at a bench. */
  public List<LoggedEntry> ofTags(int bench) {
    return waiting.stream().filter(isAt(bench)).filter(it -> stop(it).item() == 0).toList();
  }

  private static Predicate<LoggedEntry> isAt(int bench) {
    return logged -> logged.by().bench() == bench;
  }

  /** Those that a part which sits in its place, or goes into it, answers at a bench. */
  public List<LoggedEntry> answeredBy(int item, Place place, int bench) {
    return waiting.stream().filter(it -> isAnswered(it, item, place, bench)).toList();
  }

  private void give(StopGiven stop, LoggedEntry logged) {
    if (stop.stands()) {
      if (stop.item() != 0) {
        end(isOf(stop.item()));
      }
      waiting.add(logged);
    }
  }

  private void fitted(PartFitted fit, LoggedEntry logged) {
    int bench = logged.by().bench();
    waiting.removeIf(it -> isAnswered(it, fit.item(), fit.place(), bench));
  }

  /** A part that should not sit where it sits has been taken out. */
  private void unfit(PartUnfitted unfitted) {
    end(isOf(unfitted.item()).and(stop -> stop.word() == VerdictName.FITTED_BUT));
  }

  private static Predicate<StopGiven> isOf(int item) {
    return stop -> stop.item() == item;
  }

  private void end(Predicate<StopGiven> which) {
    waiting.removeIf(it -> which.test(stop(it)));
  }

  private static StopGiven stop(LoggedEntry logged) {
    return (StopGiven) logged.entry();
  }

  /** A tag that stood for no part lies at the bench where it was scanned. */
  private boolean isAnswered(LoggedEntry given, int item, Place place, int bench) {
    StopGiven stop = stop(given);
    if (stop.item() == 0) {
      return given.by().bench() == bench;
    }
    return stop.item() == item || isFilled(stop, place);
  }

  /** Two parts cannot be in one place; one that cannot live at a spot is not in it either. */
  private boolean isFilled(StopGiven stop, Place place) {
    if (!place.spot().key().equals(stop.spot())) {
      return false;
    }
    Optional<Boolean> other =
        parts
            .find(stop.item())
            .map(record -> record.part().kind())
            .map(kind -> Place.canLive(kind, place.spot()) && kind != place.kind());
    return !other.orElse(false);
  }
}
