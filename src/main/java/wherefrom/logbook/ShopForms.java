package wherefrom.logbook;

import static wherefrom.logbook.AmountFields.find;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Subject;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartSort;
import wherefrom.job.entry.ShopLineAdded;
import wherefrom.job.entry.ShopLineBack;
import wherefrom.rules.consequence.ShopWork;

/** Sizes that are bought or cut, as they stand in the file. */
final class ShopForms {
  private ShopForms() {}

  static void register(DomainModule module) {
    module.form(PartReplaced.class, Replaced.class, Replaced::of, Replaced::entry);
    module.form(ShopLineAdded.class, Line.class, Line::of, Line::entry);
    module.form(ShopLineBack.class, Back.class, Back::of, Back::entry);
  }

  record Replaced(int oldItem, int newItem, String reason, String size, String unit, String sort) {
    static Replaced of(PartReplaced part) {
      return new Replaced(
          part.oldItem(),
          part.newItem(),
          part.reason(),
          AmountFields.figure(part.size()),
          AmountFields.unit(part.size()),
          part.sort().text());
    }

    PartReplaced entry() {
      return new PartReplaced(oldItem, newItem, reason, find(size, unit), PartSort.of(sort));
    }
  }

  record Line(
      int visit,
      int line,
      String what,
      int count,
      String wanted,
      String target,
      String tolerance,
      String unit,
      boolean keep,
      ShopWork work,
      List<String> where,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) Optional<Subject.Beside> beside) {
    static Line of(ShopLineAdded line) {
      return new Line(
          line.visit(),
          line.line(),
          line.what(),
          line.count(),
          line.wanted(),
          AmountFields.figure(line.target()),
          AmountFields.figure(line.tolerance()),
          AmountFields.unit(line.target()),
          line.keep(),
          line.work(),
          line.where(),
          line.beside());
    }

    ShopLineAdded entry() {
      return new ShopLineAdded(
          visit,
          line,
          what,
          count,
          wanted,
          find(target, unit),
          find(tolerance, unit),
          keep,
          work,
          where,
          beside);
    }
  }

  record Back(int visit, int line, int count, String figure, String unit, String done) {
    static Back of(ShopLineBack back) {
      return new Back(
          back.visit(),
          back.line(),
          back.count(),
          AmountFields.figure(back.size()),
          AmountFields.unit(back.size()),
          back.done());
    }

    ShopLineBack entry() {
      return new ShopLineBack(visit, line, count, find(figure, unit), done);
    }
  }
}
