package wherefrom.job.measure;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import wherefrom.inspection.measure.LimitTarget;
import wherefrom.inspection.measure.Plausibility;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.inspection.measure.ResultKeys;
import wherefrom.inspection.measure.Tool;
import wherefrom.job.FigureParser;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.LimitTyped;
import wherefrom.job.entry.SizeTyped;
import wherefrom.job.entry.ToolListed;
import wherefrom.job.entry.ZeroChecked;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.UnitChoice;

/** The person's tools, and the limits and sizes typed for this engine. */
public final class Instruments {

  /** What became of a request. */
  public sealed interface Answer {
    record Kept(String sentence) implements Answer {}

    /** Not kept; the sentence says why and what to do. */
    record Refused(String sentence) implements Answer {}
  }

  private final OpenJob job;

  public Instruments(OpenJob job) {
    this.job = job;
  }

  /** Lists a tool; figures without a unit are in the job's. */
  public Answer list(
      String name, Dimension dimension, String resolution, String error, String repeat) {
    return list(name, UnitChoice.of(dimension), resolution, error, repeat);
  }

  /** The same for a gauge that shows other units than a length. */
  public Answer list(
      String name, UnitChoice units, String resolution, String error, String repeat) {
    return job.asOne(() -> listOnce(name, units, resolution, error, repeat));
  }

  private Answer listOnce(
      String name, UnitChoice units, String resolution, String error, String repeat) {
    if (name.isBlank()) {
      return new Answer.Refused("Give the tool a name.");
    }
    return amount(resolution, units, step -> withError(name, units, step, error, repeat));
  }

  private Answer withError(
      String name, UnitChoice units, Amount step, String error, String repeat) {
    if (step.number().signum() <= 0) {
      return new Answer.Refused("The resolution must be more than 0. What is the smallest step?");
    }
    return amount(
        error, units, off -> amount(repeat, units, again -> keep(name, step, off, again)));
  }

  private Answer keep(String name, Amount step, Amount off, Amount again) {
    if (off.number().signum() < 0 || again.number().signum() < 0) {
      return new Answer.Refused("Error and repeat have no sign. How far at most?");
    }
    job.record(new ToolListed(name.strip(), step, off, again));
    return new Answer.Kept(name.strip() + " is listed.");
  }

  /** The tool's reading at zero. */
  public Answer zero(String tool, String figure) {
    return job.asOne(() -> zeroOnce(tool, figure));
  }

  private Answer zeroOnce(String tool, String figure) {
    Optional<Tool> known = job.state().measures().findTool(tool);
    return known
        .map(one -> amount(figure, units(one), read -> zero(one, read)))
        .orElseGet(() -> new Answer.Refused("The tool \"" + tool + "\" is not on your list."));
  }

  /** A tester that shows a share is off by a share. */
  private static UnitChoice units(Tool tool) {
    return tool.dimension() == Dimension.NUMBER
        ? new UnitChoice(List.of(tool.resolution().unit()))
        : UnitChoice.of(tool.dimension());
  }

  private Answer zero(Tool tool, Amount read) {
    job.record(new ZeroChecked(tool.name(), read));
    double off = Math.abs(read.in(tool.resolution().unit()));
    return new Answer.Kept(
        off > tool.error().number().doubleValue()
            ? tool.name()
                + " shows "
                + read.text()
                + " at zero, more than its card allows. Set it, or subtract it from every"
                + " reading."
            : tool.name() + " is right at zero.");
  }

  /** A limit of this engine, as it is typed; an empty end is no limit. */
  public Answer limit(String plan, String result, String lower, String upper, String source) {
    return job.asOne(() -> limitOnce(plan, result, lower, upper, source));
  }

  private Answer limitOnce(String plan, String result, String lower, String upper, String source) {
    return named(
        plan,
        result,
        source,
        units ->
            end(
                lower,
                units,
                low -> end(upper, units, high -> keep(plan, result, low, high, source))));
  }

  /** A limit of this engine; an absent end is no limit, and where both are the limit goes. */
  public Answer limit(
      String plan, String result, Optional<Amount> low, Optional<Amount> high, String source) {
    return job.asOne(() -> limitOnce(plan, result, low, high, source));
  }

  private Answer limitOnce(
      String plan, String result, Optional<Amount> low, Optional<Amount> high, String source) {
    return named(
        plan,
        result,
        source,
        units ->
            Stream.of(low, high)
                .flatMap(Optional::stream)
                .filter(end -> end.dimension() != units.dimension())
                .findFirst()
                .<Answer>map(
                    end ->
                        new Answer.Refused(
                            end.text() + " is not " + units.dimension().words() + "."))
                .orElseGet(() -> keep(plan, result, low, high, source)));
  }

  /** What a limit is of has to be known, and where it is printed. */
  private static Answer named(
      String plan, String result, String source, Function<UnitChoice, Answer> then) {
    Optional<LimitTarget> known = LimitTarget.find(plan);
    if (known.isEmpty()) {
      return new Answer.Refused("There is no plan of readings named \"" + plan + "\".");
    }
    if (known.get().findResult(result).isEmpty()) {
      return new Answer.Refused(
          "\""
              + result
              + "\" is not a result of "
              + known.get().title()
              + ". Use one of: "
              + String.join(
                  ", ", known.get().results().stream().map(ResultKeys.Bounded::key).toList())
              + ".");
    }
    if (source.isBlank()) {
      return new Answer.Refused("Say where the limit is printed: manual and page.");
    }
    return then.apply(known.get().units());
  }

  private Answer end(String text, UnitChoice units, Function<Optional<Amount>, Answer> then) {
    return text.isBlank()
        ? then.apply(Optional.empty())
        : amount(text, units, end -> then.apply(Optional.of(end)));
  }

  private Answer keep(
      String plan, String result, Optional<Amount> low, Optional<Amount> high, String source) {
    if (low.isEmpty() && high.isEmpty()) {
      job.record(new LimitTyped(plan, result, low, high, source.strip()));
      return new Answer.Kept("The limit is removed.");
    }
    boolean swapped =
        low.flatMap(end -> high.map(other -> end.inBase().compareTo(other.inBase()) > 0))
            .orElse(false);
    if (swapped) {
      return new Answer.Refused("The lower limit is above the upper one. Swap them.");
    }
    job.record(new LimitTyped(plan, result, low, high, source.strip()));
    return new Answer.Kept("The limit is set, from " + source.strip() + ".");
  }

  /** The size when new of what a plan measures. */
  public Answer size(String plan, String figure, String source) {
    return job.asOne(() -> sizeOnce(plan, figure, source));
  }

  private Answer sizeOnce(String plan, String figure, String source) {
    Optional<ReadingPlan> known = ReadingPlans.find(plan).filter(ReadingPlan::hasStandardSize);
    if (known.isEmpty()) {
      return new Answer.Refused(
          "A standard size is typed for journals, bores and installed heights.");
    }
    if (source.isBlank()) {
      return new Answer.Refused("Say where the size is printed: manual and page.");
    }
    return amount(
        figure,
        Dimension.LENGTH,
        size -> {
          job.record(new SizeTyped(plan, size, source.strip()));
          return new Answer.Kept("The size is set, from " + source.strip() + ".");
        });
  }

  /**
   * Whether a figure that a manual prints in inch and in millimetre agrees with itself, to the
   * digits printed. Nothing is recorded.
   */
  public Answer comparePair(String inch, String millimetre) {
    return amount(
        inch,
        Dimension.LENGTH,
        one -> amount(millimetre, Dimension.LENGTH, other -> comparePair(one, other)));
  }

  private static Answer comparePair(Amount one, Amount other) {
    return Plausibility.findPairFault(one, other)
        .<Answer>map(Answer.Refused::new)
        .orElseGet(
            () ->
                new Answer.Kept(
                    one.text() + " and " + other.text() + " are one size, to the digits printed."));
  }

  private Answer amount(String text, Dimension dimension, Function<Amount, Answer> then) {
    return amount(text, UnitChoice.of(dimension), then);
  }

  private Answer amount(String text, UnitChoice units, Function<Amount, Answer> then) {
    return FigureParser.read(text, units.usual(job.state().units()), then, Answer.Refused::new);
  }
}
