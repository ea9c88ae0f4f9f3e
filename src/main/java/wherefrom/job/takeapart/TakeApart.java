package wherefrom.job.takeapart;

import java.util.List;
import java.util.function.Function;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.tags.CodeLookup;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.Verdict;

/** Taking apart: each part is scanned as it comes out of its place. */
public final class TakeApart {

  /** What a scan did. */
  public sealed interface Answer {

    /** What the function for its kind makes of it. */
    default <R> R match(
        Function<CameOut, R> cameOut,
        Function<AlreadyOut, R> alreadyOut,
        Function<FittedOrLost, R> fittedOrLost,
        Function<Refused, R> refused,
        Function<NoPart, R> noPart) {
      if (this instanceof CameOut one) {
        return cameOut.apply(one);
      }
      if (this instanceof AlreadyOut one) {
        return alreadyOut.apply(one);
      }
      if (this instanceof FittedOrLost one) {
        return fittedOrLost.apply(one);
      }
      if (this instanceof Refused one) {
        return refused.apply(one);
      }
      return noPart.apply((NoPart) this);
    }

    /** Logged: the part is out. */
    record CameOut(PartRecord part) implements Answer {}

    /** It was out already, on the bench or away; nothing was logged. */
    record AlreadyOut(PartRecord part) implements Answer {}

    /** It does not come out, but out again, or is found again: another deed; nothing was logged. */
    record FittedOrLost(PartRecord part) implements Answer {}

    /** The code stands for no part of this job. */
    record Refused(Verdict verdict) implements Answer {}

    /** A card or a basket, which has its own meaning elsewhere. */
    record NoPart(CodeLookup found) implements Answer {}
  }

  private final OpenJob job;

  public TakeApart(OpenJob job) {
    this.job = job;
  }

  /** Logs the part that a code stands for as out. */
  public Answer out(CodeLookup found) {
    return job.asOne(() -> outOnce(found));
  }

  private Answer outOnce(CodeLookup found) {
    return found.match(
        part -> out(part.part()),
        Answer.NoPart::new,
        Answer.NoPart::new,
        Answer.NoPart::new,
        Answer.NoPart::new,
        Answer.NoPart::new,
        refused -> refuse(refused.verdict()));
  }

  private Answer refuse(Verdict verdict) {
    if (verdict.isLogged()) {
      job.record(new StopGiven(0, "", verdict.name(), verdict.sentence(), false));
    }
    return new Answer.Refused(verdict);
  }

  /** Logs a part as out. */
  public Answer out(PartRecord part) {
    return job.asOne(() -> outOnce(part));
  }

  private Answer outOnce(PartRecord scanned) {
    int item = scanned.part().item();
    PartRecord part = job.state().getPart(item);
    return switch (part.where()) {
      case IN_ENGINE -> {
        job.record(new PartOut(item));
        yield new Answer.CameOut(job.state().getPart(item));
      }
      case OUT, WASHING, AT_SHOP -> new Answer.AlreadyOut(part);
      case FITTED, LOST -> new Answer.FittedOrLost(part);
      case RETIRED ->
          new Answer.Refused(
              new Verdict.Retired(part.part(), job.state().bench().findReplacement(item)));
    };
  }

  /**
   * Logs a part as out together with what was over it, as one step.
   *
   * @param first what had to be off first
   */
  public Answer out(List<PartRecord> first, PartRecord part) {
    return job.asOne(
        () -> {
          first.forEach(this::out);
          return out(part);
        });
  }

  /** The parts that are still in the engine, in the order of taking apart. */
  public static List<PartRecord> listInside(EngineJob state) {
    return state.places().stream()
        .flatMap(place -> state.findOwner(place).stream())
        .map(part -> state.getPart(part.item()))
        .filter(part -> part.where() == Whereabouts.IN_ENGINE)
        .toList();
  }
}
