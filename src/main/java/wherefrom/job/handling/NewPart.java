package wherefrom.job.handling;

import java.util.Optional;
import java.util.function.Function;
import wherefrom.engine.LifterType;
import wherefrom.job.EngineJob;
import wherefrom.job.FigureParser;
import wherefrom.job.FittingSize;
import wherefrom.job.StandingRule;
import wherefrom.job.SurfaceSizes;
import wherefrom.job.entry.PartSort;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.rules.size.CutSurface;
import wherefrom.rules.size.SizeText;

/**
 * What is said of a new part when it is taken on.
 *
 * @param size how far it is from standard, as typed: {@code 0.010 in}, {@code standard}; {@link
 *     #LISTED} for what the buying list says; blank where nobody says
 * @param sort of which other sort it is than the old one, such as {@code roller}; blank for the
 *     same
 */
public record NewPart(String size, String sort) {
  /** Stands for the size that the buying list gives. */
  public static final String LISTED = "listed";

  /** Like the old one, of a size that nobody said. */
  public static final NewPart LIKE_THE_OLD = new NewPart("", "");

  /** Of the size that the list gives, and of the sort that the rules want. */
  public static NewPart asListed(EngineJob job, Part old) {
    return new NewPart(
        listed(job, old).isPresent() ? LISTED : "", findSortWanted(job, old).orElse(""));
  }

  /** The sort that the rules want in place of the old one, such as {@code roller}. */
  public static Optional<String> findSortWanted(EngineJob job, Part old) {
    return job.rules().listFor(old).stream()
        .filter(StandingRule::binding)
        .flatMap(rule -> rule.consequence().findSort().stream())
        .flatMap(sort -> sort.findLifters().stream())
        .map(LifterType::id)
        .reduce((earlier, later) -> later);
  }

  /** The size, absent where none is said; or a sentence that says what is wrong. */
  <T> T read(
      EngineJob job, Part old, Function<Optional<Amount>, T> done, Function<String, T> refused) {
    if (old.kind() == PartKind.LIFTER && !partSort().isSame() && partSort().lifters().isEmpty()) {
      return refused.apply("A lifter is flat or roller. Say which.");
    }
    if (size.isBlank()) {
      return done.apply(Optional.empty());
    }
    if (CutSurface.find(old.kind()).isEmpty()) {
      return refused.apply(
          "Only shells and pistons have a size over or under standard. Keep others as a note.");
    }
    Optional<Amount> said = size.strip().equals(LISTED) ? listed(job, old) : typed(job);
    return said.isPresent() ? done.apply(said) : refused.apply(fault());
  }

  /** As it is kept. */
  PartSort partSort() {
    return PartSort.of(sort);
  }

  private static Optional<Amount> listed(EngineJob job, Part old) {
    return new SurfaceSizes(job)
        .findToBuy(old.home())
        .filter(FittingSize::isKnown)
        .flatMap(FittingSize::step);
  }

  private Optional<Amount> typed(EngineJob job) {
    return SizeText.read(size, FigureParser.usual(job.units(), Dimension.LENGTH))
        .filter(amount -> !SizeText.isDiameter(amount));
  }

  private String fault() {
    return size.strip().equals(LISTED)
        ? "The buying list has no size for it yet. Type one, such as 0.010 in or standard."
        : "\""
            + size.strip()
            + "\" is not a size of this part. Type the step, such as 0.010 in, or standard.";
  }
}
