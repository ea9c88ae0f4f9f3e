package wherefrom.job.shop;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.FigureParser;
import wherefrom.job.entry.ShopLineAdded;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.rules.consequence.ShopWork;
import wherefrom.rules.size.CutSurface;
import wherefrom.rules.size.SizeText;

/**
 * What is ordered of the machine shop for something that is no tagged part.
 *
 * @param work the kind of work
 * @param where the cylinders or banks; empty for all
 * @param what the thing that goes
 * @param wanted the work in words; blank for the words of its kind
 * @param target the size wanted back, or a step from the standard size; may be blank
 * @param tolerance how far from it is good; may be blank
 * @param keep true of what must not get lost
 * @param beside the bag or the big part that goes; empty where what goes has no tag
 */
public record ShopOrder(
    ShopWork work,
    List<String> where,
    String what,
    int count,
    String wanted,
    String target,
    String tolerance,
    boolean keep,
    Optional<Subject.Beside> beside) {
  public ShopOrder {
    where = List.copyOf(where);
    wanted = wanted.isBlank() && work != ShopWork.OTHER ? work.words() : wanted;
  }

  /** Of what has no tag. */
  public ShopOrder(
      ShopWork work,
      List<String> where,
      String what,
      int count,
      String wanted,
      String target,
      String tolerance,
      boolean keep) {
    this(work, where, what, count, wanted, target, tolerance, keep, Optional.empty());
  }

  /** The line of the slip that it makes, or a sentence that says what is wrong. */
  <T> T line(
      EngineJob job,
      int visit,
      int line,
      Function<ShopLineAdded, T> done,
      Function<String, T> refused) {
    if (what.isBlank() || wanted.isBlank() || count < 1) {
      return refused.apply("Say what goes, how many pieces, and what is wanted.");
    }
    Optional<String> fault = work.findFault(where, count, job.layout());
    if (fault.isPresent()) {
      return refused.apply(fault.get());
    }
    if (target.isBlank()) {
      return done.apply(line(visit, line, Optional.empty(), Optional.empty()));
    }
    return sized(job, size -> within(job, visit, line, size, done, refused), refused);
  }

  private <T> T within(
      EngineJob job,
      int visit,
      int line,
      Amount size,
      Function<ShopLineAdded, T> done,
      Function<String, T> refused) {
    if (tolerance.isBlank()) {
      return done.apply(line(visit, line, Optional.of(size), Optional.empty()));
    }
    return FigureParser.read(
        tolerance,
        job.units(),
        Dimension.LENGTH,
        good -> {
          Amount within = good.number().signum() < 0 ? good.negated() : good;
          return done.apply(line(visit, line, Optional.of(size), Optional.of(within)));
        },
        refused);
  }

  private ShopLineAdded line(int visit, int line, Optional<Amount> size, Optional<Amount> within) {
    return new ShopLineAdded(
        visit, line, what.strip(), count, wanted.strip(), size, within, keep, work, where, beside);
  }

  /** What is cut to a diameter comes back as one, so a step is turned into it at once. */
  private <T> T sized(EngineJob job, Function<Amount, T> then, Function<String, T> refused) {
    Optional<CutSurface> surface = work.change().flatMap(CutSurface::find);
    if (surface.isEmpty()) {
      return FigureParser.read(target, job.units(), Dimension.LENGTH, then, refused);
    }
    Optional<Amount> size =
        SizeText.read(target, FigureParser.usual(job.units(), Dimension.LENGTH));
    if (size.isEmpty()) {
      return refused.apply(
          "\""
              + target.strip()
              + "\" is not a size of a "
              + surface.get().word()
              + ". Give the diameter wanted back, or a step such as 0.010 in.");
    }
    if (SizeText.isDiameter(size.get())) {
      return then.apply(size.get());
    }
    return job.measures()
        .findSize(surface.get().plan())
        .map(standard -> surface.get().diameter(standard, size.get()))
        .map(diameter -> then.apply(padded(diameter)))
        .orElseGet(
            () ->
                refused.apply(
                    "Give the diameter wanted back, or type the standard size of the "
                        + surface.get().word()
                        + " first."));
  }

  private static Amount padded(Amount diameter) {
    BigDecimal number = diameter.number();
    return number.scale() < 2 ? new Amount(number.setScale(2), diameter.unit()) : diameter;
  }
}
