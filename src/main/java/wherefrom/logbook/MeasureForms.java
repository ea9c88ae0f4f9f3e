package wherefrom.logbook;

import static wherefrom.logbook.AmountFields.amount;
import static wherefrom.logbook.AmountFields.figure;
import static wherefrom.logbook.AmountFields.find;

import java.util.Optional;
import wherefrom.job.entry.LimitTyped;
import wherefrom.job.entry.SizeTyped;
import wherefrom.job.entry.TakenReading;
import wherefrom.job.entry.ToolListed;
import wherefrom.job.entry.ZeroChecked;
import wherefrom.quantity.Amount;

/** What was measured, as it stands in the file. */
final class MeasureForms {
  private MeasureForms() {}

  static void register(DomainModule module) {
    module.form(TakenReading.class, Reading.class, Reading::of, Reading::entry);
    module.form(LimitTyped.class, Limit.class, Limit::of, Limit::entry);
    module.form(SizeTyped.class, Size.class, Size::of, Size::entry);
    module.form(ToolListed.class, Tool.class, Tool::of, Tool::entry);
    module.form(ZeroChecked.class, Zero.class, Zero::of, Zero::entry);
  }

  record Reading(String station, String figure, String unit) {
    static Reading of(TakenReading taken) {
      Amount read = taken.reading();
      return new Reading(taken.station(), AmountFields.figure(read), AmountFields.unit(read));
    }

    TakenReading entry() {
      return new TakenReading(station, amount(figure, unit));
    }
  }

  record Limit(String plan, String result, String lower, String upper, String unit, String source) {
    static Limit of(LimitTyped limit) {
      Optional<Amount> end = limit.lower().or(limit::upper);
      return new Limit(
          limit.plan(),
          limit.result(),
          figure(limit.lower()),
          figure(limit.upper()),
          AmountFields.unit(end),
          limit.source());
    }

    LimitTyped entry() {
      return new LimitTyped(plan, result, find(lower, unit), find(upper, unit), source);
    }
  }

  record Size(String plan, String figure, String unit, String source) {
    static Size of(SizeTyped typed) {
      Amount size = typed.size();
      return new Size(
          typed.plan(), AmountFields.figure(size), AmountFields.unit(size), typed.source());
    }

    SizeTyped entry() {
      return new SizeTyped(plan, amount(figure, unit), source);
    }
  }

  record Tool(String name, String unit, String resolution, String error, String repeat) {
    static Tool of(ToolListed tool) {
      return new Tool(
          tool.name(),
          AmountFields.unit(tool.resolution()),
          figure(tool.resolution()),
          figure(tool.error()),
          figure(tool.repeat()));
    }

    ToolListed entry() {
      return new ToolListed(
          name, amount(resolution, unit), amount(error, unit), amount(repeat, unit));
    }
  }

  record Zero(String tool, String figure, String unit) {
    static Zero of(ZeroChecked zero) {
      Amount shown = zero.shown();
      return new Zero(zero.tool(), AmountFields.figure(shown), AmountFields.unit(shown));
    }

    ZeroChecked entry() {
      return new ZeroChecked(tool, amount(figure, unit));
    }
  }
}
