package wherefrom.job.puttogether;

import java.util.List;
import java.util.Optional;
import wherefrom.engine.Spot;
import wherefrom.job.JobPartNames;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.Undo;
import wherefrom.job.Unmated;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.entry.TakenBack;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.Attempt;
import wherefrom.rules.Belonging;
import wherefrom.rules.Cue;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictName;
import wherefrom.rules.VerdictRules;

/** Judges a part at a spot and logs what follows. */
public final class Fitting {
  private final OpenJob job;

  public Fitting(OpenJob job) {
    this.job = job;
  }

  /** The verdict alone; nothing is logged. */
  public Verdict judge(Part part, Spot spot, boolean turned) {
    return judge(new Attempt(part, spot, turned));
  }

  /** The verdict alone; nothing is logged. */
  public Verdict judge(Attempt attempt) {
    return VerdictRules.judge(job.state().bench(), attempt);
  }

  /** Why a part cannot go in now where it belongs; empty where it can. */
  public Optional<Verdict> findAgainst(Part part) {
    Place place = Belonging.of(job.state().bench(), part).place();
    return Optional.of(judge(part, place.spot(), false))
        .filter(verdict -> verdict.name() != VerdictName.RIGHT_PLACE);
  }

  /** Judges, then logs the fit where it is right and the stop where it is not. */
  public Verdict fit(Part part, Spot spot, boolean turned) {
    return fit(new Attempt(part, spot, turned));
  }

  /** Judges, then logs the fit where it is right and the stop where it is not. */
  public Verdict fit(Attempt attempt) {
    return job.asOne(() -> fitOnce(attempt));
  }

  private Verdict fitOnce(Attempt attempt) {
    Part part = attempt.part();
    Spot spot = attempt.spot();
    Verdict verdict = judge(attempt);
    if (verdict instanceof Verdict.RightPlace right) {
      job.record(
          new PartFitted(part.item(), right.place(), "", Optional.empty(), attempt.untagged()));
    } else if (verdict.stops()) {
      job.record(
          new StopGiven(
              part.item(),
              spot.key(),
              verdict.name(),
              sentence(verdict),
              true,
              attempt.untagged()));
    }
    return verdict;
  }

  private String sentence(Verdict verdict) {
    return verdict.words(new JobPartNames(job.state())).sentence();
  }

  /**
   * Logs a tag that stands for no part of the job.
   *
   * @param spot where it was scanned; empty where none is named
   * @return whether it stops, and stands until it is solved
   */
  public boolean refuse(Verdict verdict, Optional<Spot> spot) {
    return job.asOne(() -> refuseOnce(verdict, spot));
  }

  private boolean refuseOnce(Verdict verdict, Optional<Spot> spot) {
    if (!verdict.isLogged()) {
      // A question which tag a typed code is of: nothing was done yet.
      return false;
    }
    boolean stands = verdict.cue() == Cue.STOP;
    String at = spot.map(Spot::key).orElse("");
    job.record(new StopGiven(0, at, verdict.name(), sentence(verdict), stands));
    return stands;
  }

  /**
   * What stands in the way is taken out by hand, then the part is judged anew. Where it is right,
   * both are one act; a stop that comes instead is an entry of its own, as it is solved alone.
   */
  public Verdict tookOut(Part inTheWay, String reason, Attempt again) {
    Verdict verdict =
        job.asOne(
            () -> {
              if (job.state().findFittedAt(inTheWay.item()).isPresent()) {
                job.record(new PartUnfitted(inTheWay.item(), reason));
              }
              Verdict now = judge(again);
              return now.stops() ? now : fit(again);
            });
    return verdict.stops() ? fit(again) : verdict;
  }

  /**
   * A fit that was none is taken back, whatever was logged since. Where another part made room in
   * the same act, that stands: the part is taken out again.
   */
  public void takeBack(Part part) {
    job.inOne(() -> takeBackOnce(part));
  }

  private void takeBackOnce(Part part) {
    List<LoggedEntry> standing = job.state().standing();
    Optional<LoggedEntry> fit =
        standing.stream()
            .filter(it -> it.entry() instanceof PartFitted one && one.item() == part.item())
            .reduce((earlier, later) -> later)
            .map(it -> Undo.whole(standing, it.sequence()));
    if (fit.isPresent() && fit.get().entry() instanceof PartFitted) {
      job.record(new TakenBack(fit.get().sequence()));
    } else if (job.state().findFittedAt(part.item()).isPresent()) {
      job.record(new PartUnfitted(part.item(), "it was in turned"));
    }
  }

  /** What fitting a part at a spot on purpose would un-mate; empty where it is at home there. */
  public Optional<Unmated> findUnmated(Part part, Spot spot) {
    return Place.canLive(part.kind(), spot)
        ? Unmated.find(job.state(), part, new Place(part.kind(), spot), "")
        : Optional.empty();
  }

  /** Fits a part the right way round against a stop, for a reason. */
  public Verdict fitOnPurpose(Part part, Spot spot, String reason) {
    return fitOnPurpose(new Attempt(part, spot, false), reason);
  }

  /**
   * Fits a part against a stop, for a reason. What sits in the place is taken out first. A part of
   * another kind cannot be meant; one that must be new or is retired never goes in.
   *
   * @return what the stop was, and what was logged
   * @throws IllegalArgumentException with a plain sentence when the reason is missing or the stop
   *     is one that no reason overrules
   */
  public Verdict fitOnPurpose(Attempt attempt, String reason) {
    return job.asOne(() -> fitOnPurposeOnce(attempt, reason));
  }

  /**
   * The reason for a fit on purpose, as it is kept.
   *
   * @throws IllegalArgumentException with a plain sentence when it is missing
   */
  public static String requireReason(String reason) {
    if (reason.isBlank()) {
      throw new IllegalArgumentException("Say why the part is fitted here on purpose.");
    }
    return reason.strip();
  }

  private Verdict fitOnPurposeOnce(Attempt attempt, String reason) {
    String why = requireReason(reason);
    Verdict against = judge(attempt);
    if (!against.stops()) {
      return fit(attempt);
    }
    if (!canOverrule(attempt)) {
      throw new IllegalArgumentException(NeverOnPurpose.words(against, attempt));
    }
    Part part = attempt.part();
    Place place = new Place(part.kind(), attempt.spot());
    return job.asOne(
        () -> {
          makeRoom(place, part);
          for (VerdictName each : overruled(attempt, against)) {
            job.record(
                new PartFitted(part.item(), place, why, Optional.of(each), attempt.untagged()));
          }
          return against;
        });
  }

  /** What the reason is given for: that it is turned, which the first stop hides, and the stop. */
  private List<VerdictName> overruled(Attempt attempt, Verdict against) {
    VerdictName stop = why(against);
    boolean hidden =
        stop != VerdictName.WRONG_END && VerdictRules.isTurned(job.state().bench(), attempt);
    return hidden ? List.of(VerdictName.WRONG_END, stop) : List.of(stop);
  }

  /** Whether a part may go in against its stop, for a reason. */
  public boolean canOverrule(Attempt attempt) {
    return VerdictRules.canBeOverruled(job.state().bench(), attempt);
  }

  /** What stands against a part that sits there already is what the reason is given for. */
  private static VerdictName why(Verdict against) {
    return against instanceof Verdict.FittedBut fitted ? fitted.against().name() : against.name();
  }

  private void makeRoom(Place place, Part part) {
    job.state()
        .findFitted(place)
        .filter(there -> there.item() != part.item())
        .ifPresent(
            there -> job.record(new PartUnfitted(there.item(), "made room for another part")));
  }
}
