package wherefrom.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wherefrom.job.FittingSize.Basis;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.rules.size.CutSurface;
import wherefrom.rules.size.SizeText;
import wherefrom.text.Words;
import wherefrom.workings.catalogue.size.SizeSteps;

/**
 * Works out the size that fits each of a kind of surface: the size as cut, standard where nothing
 * was cut, and the next step that cleans up for a surface alone that is going to be cut.
 */
final class FittingSizes {
  private final List<SurfaceSize> all;

  FittingSizes(List<SurfaceSize> all) {
    this.all = List.copyOf(all);
  }

  /** Whether two sizes are meant to be one. */
  static boolean isNear(Amount one, Amount other) {
    BigDecimal apart = one.inBase().subtract(other.inBase()).abs();
    return apart.compareTo(SizeSteps.near(one.unit()).inBase()) <= 0;
  }

  private SurfaceSize get(String where) {
    return all.stream().filter(one -> one.where().equals(where)).findFirst().orElseThrow();
  }

  FittingSize toBuy(String where) {
    SurfaceSize here = get(where);
    return here.coming().map(coming -> coming(here, coming)).orElseGet(() -> asItIs(where));
  }

  FittingSize asItIs(String where) {
    SurfaceSize here = get(where);
    Optional<LastCut> cut = here.cut();
    if (cut.isPresent() && cut.get().size().isPresent()) {
      return checked(here, stated(here, cut.get(), ""));
    }
    if (cut.isPresent() && !cut.get().other()) {
      return cutUnsaid(here);
    }
    return measured(here).orElseGet(() -> cut.isPresent() ? other(here) : presumed(here));
  }

  /** The size that somebody said, by change or by slip. */
  private static FittingSize stated(SurfaceSize here, LastCut cut, String after) {
    CutSurface surface = here.surface();
    Amount size = cut.size().orElseThrow();
    Optional<Amount> off = cut.findOff(surface, here.standard());
    if (off.isEmpty()) {
      return FittingSize.unknown(
          "type the standard size of the "
              + surface.word()
              + " first, to tell how far "
              + size.text()
              + " is from it");
    }
    SizeSteps steps = surface.steps();
    Optional<Amount> step = steps.findExact(off.get()).or(() -> steps.findNear(off.get()));
    if (step.isPresent()) {
      return FittingSize.of(step.get(), Basis.CUT, surface.said(step.get()) + after);
    }
    return SizeText.isDiameter(size)
        ? FittingSize.unknown(
            size.text() + " is between the usual steps: ask the machine shop what fits")
        : FittingSize.of(
            size,
            Basis.CUT,
            surface.words(size) + after + "; no usual step, so ask who sells parts for it");
  }

  /** A surface that measures otherwise than it was cut is measured again before one buys. */
  private FittingSize checked(SurfaceSize here, FittingSize stated) {
    Optional<Amount> cut = here.asCut();
    return readings(here).stream()
        .filter(one -> cut.isPresent() && !isNear(cut.get(), one.leastWorn().orElseThrow()))
        .findFirst()
        .map(
            one ->
                FittingSize.unknown(
                    one.words()
                        + " measures "
                        + one.leastWorn().orElseThrow().text()
                        + ", cut to "
                        + cut.orElseThrow().text()
                        + ": measure it again, or ask the machine shop"))
        .orElse(stated);
  }

  private FittingSize cutUnsaid(SurfaceSize here) {
    return measured(here)
        .filter(size -> size.step().isEmpty() || size.step().get().number().signum() > 0)
        .orElseGet(
            () ->
                FittingSize.unknown(
                    "say to which size the "
                        + here.surface().word()
                        + " was "
                        + here.surface().cut()
                        + ", or measure it now"));
  }

  /** One journal that is measured tells of all: they are ground alike. */
  private List<SurfaceSize> readings(SurfaceSize here) {
    List<SurfaceSize> those = here.surface().isAlike() ? all : List.of(here);
    return those.stream().filter(one -> one.measured().isPresent()).toList();
  }

  /** Empty where nothing is measured, or the standard size is not typed. */
  private Optional<FittingSize> measured(SurfaceSize here) {
    CutSurface surface = here.surface();
    List<SurfaceSize> readings = readings(here);
    if (readings.isEmpty() || here.standard().isEmpty()) {
      return Optional.empty();
    }
    List<Amount> steps = new ArrayList<>();
    for (SurfaceSize one : readings) {
      Amount reading = one.leastWorn().orElseThrow();
      Optional<Amount> step = surface.steps().findNear(surface.off(here.standard().get(), reading));
      if (step.isEmpty()) {
        return Optional.of(
            FittingSize.unknown(
                one.words()
                    + " measures "
                    + reading.text()
                    + ", between the usual steps: ask"
                    + " the machine shop"));
      }
      steps.add(step.get());
    }
    return Optional.of(alike(surface, steps));
  }

  private static FittingSize alike(CutSurface surface, List<Amount> steps) {
    Amount first = steps.get(0);
    if (steps.stream().anyMatch(step -> !isNear(step, first))) {
      return FittingSize.unknown(
          "the " + surface.word() + "s measure different steps: ask the machine shop");
    }
    String unsaid = first.number().signum() == 0 ? "" : ", as measured";
    return FittingSize.of(first, Basis.MEASURED, surface.said(first) + unsaid);
  }

  /** Nobody knows whether another crank is standard: its journals tell. */
  private static FittingSize other(SurfaceSize here) {
    return FittingSize.unknown("measure each " + here.surface().word() + " of the other crank");
  }

  private FittingSize presumed(SurfaceSize here) {
    CutSurface surface = here.surface();
    String todo =
        readings(here).isEmpty()
            ? "measure the " + surface.word()
            : "type the standard size of the " + surface.word();
    Amount standard =
        new Amount(BigDecimal.ZERO, here.standard().map(Amount::unit).orElse(Unit.INCH));
    return FittingSize.of(
        standard,
        Basis.PRESUMED,
        "standard, if never " + surface.cut() + " before: " + todo + " to be sure");
  }

  private FittingSize coming(SurfaceSize here, ComingCut coming) {
    String after = ", once " + here.surface().cut();
    if (coming.size().isEmpty()) {
      return cleanUp(here, after);
    }
    FittingSize size = stated(here, coming.made(), after);
    return new FittingSize(
        size.step(), size.step().isEmpty() ? Basis.UNKNOWN : Basis.COMING, size.words());
  }

  /** The smallest step that cleans up every surface that is going to be cut. */
  private FittingSize cleanUp(SurfaceSize here, String after) {
    CutSurface surface = here.surface();
    List<SurfaceSize> those =
        all.stream()
            .filter(one -> one.coming().filter(c -> c.size().isEmpty()).isPresent())
            .toList();
    long unmeasured = those.stream().filter(one -> one.measured().isEmpty()).count();
    if (unmeasured > 0) {
      return FittingSize.unknown(
          unmeasured + " of " + Words.count(those.size(), surface.word()) + " not measured");
    }
    if (here.standard().isEmpty()) {
      return FittingSize.unknown("type the standard size of the " + surface.word() + " first");
    }
    return findCleanUp(surface, those)
        .map(
            step ->
                FittingSize.of(
                    step,
                    Basis.COMING,
                    surface.said(step) + after + "; the next step that cleans up"))
        .orElseGet(
            () -> FittingSize.unknown("worn past the last usual step: ask the machine shop"));
  }

  private Optional<Amount> findCleanUp(CutSurface surface, List<SurfaceSize> those) {
    List<Optional<Amount>> needed =
        those.stream()
            .map(
                one ->
                    one.measured()
                        .flatMap(result -> result.findValue(surface.nextStep()))
                        .map(value -> value.amount()))
            .toList();
    if (needed.stream().anyMatch(Optional::isEmpty)) {
      return Optional.empty();
    }
    Amount most =
        needed.stream()
            .map(Optional::orElseThrow)
            .max(Comparator.comparing(Amount::inBase))
            .orElseThrow();
    return surface.steps().list(most.unit()).stream()
        .filter(step -> step.inBase().compareTo(most.inBase()) >= 0 || isNear(step, most))
        .filter(step -> those.stream().allMatch(one -> isDeeper(step, one)))
        .findFirst();
  }

  /** What is cut again is cut to a further step than it has. */
  private boolean isDeeper(Amount step, SurfaceSize one) {
    return asItIs(one.where())
        .step()
        .map(now -> step.inBase().compareTo(now.inBase()) > 0 && !isNear(step, now))
        .orElse(true);
  }
}
