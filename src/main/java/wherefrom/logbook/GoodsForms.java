package wherefrom.logbook;

import static wherefrom.logbook.AmountFields.find;

import wherefrom.job.entry.GoodsArrived;
import wherefrom.job.entry.GoodsMeasured;
import wherefrom.job.entry.GoodsWay;
import wherefrom.job.entry.PartNumberTyped;
import wherefrom.quantity.Amount;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.size.GoodsSize;

/**
 * What came, as it stands in the file. Its size is an id, and how far that is from standard as
 * figure and unit; earlier files hold the words that were shown instead, and no figure.
 */
final class GoodsForms {
  private GoodsForms() {}

  static void register(DomainModule module) {
    module.form(GoodsArrived.class, Arrived.class, Arrived::of, Arrived::entry);
    module.form(GoodsMeasured.class, Gauged.class, Gauged::of, Gauged::entry);
    module.form(PartNumberTyped.class, Numbered.class, Numbered::of, Numbered::entry);
  }

  private static GoodsSize read(String id, String figure, String unit) {
    return GoodsSize.ofLogbook(id, find(figure, unit));
  }

  record Arrived(
      Article what,
      String size,
      String figure,
      String unit,
      int pieces,
      String measured,
      boolean right) {
    static Arrived of(GoodsArrived it) {
      GoodsSize size = it.size();
      return new Arrived(
          it.what(),
          size.id(),
          AmountFields.figure(size.findOff()),
          AmountFields.unit(size.findOff()),
          it.pieces(),
          it.measured(),
          it.right());
    }

    GoodsArrived entry() {
      return new GoodsArrived(what, read(size, figure, unit), pieces, measured, right);
    }
  }

  record Gauged(
      Article what,
      String size,
      String figure,
      String unit,
      GoodsWay way,
      Amount reading,
      Amount off,
      Amount standard,
      Amount step,
      Amount tolerance) {
    static Gauged of(GoodsMeasured it) {
      GoodsSize size = it.size();
      return new Gauged(
          it.what(),
          size.id(),
          AmountFields.figure(size.findOff()),
          AmountFields.unit(size.findOff()),
          it.way(),
          it.reading(),
          it.off(),
          it.standard(),
          it.step(),
          it.tolerance());
    }

    GoodsMeasured entry() {
      GoodsSize of = read(size, figure, unit);
      return new GoodsMeasured(what, of, way, reading, off, standard, step, tolerance);
    }
  }

  record Numbered(Article what, String size, String figure, String unit, String number) {
    static Numbered of(PartNumberTyped it) {
      GoodsSize size = it.size();
      return new Numbered(
          it.what(),
          size.id(),
          AmountFields.figure(size.findOff()),
          AmountFields.unit(size.findOff()),
          it.number());
    }

    PartNumberTyped entry() {
      return new PartNumberTyped(what, read(size, figure, unit), number);
    }
  }
}
