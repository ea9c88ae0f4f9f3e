package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.shop.ShopVisit;
import wherefrom.parts.Part;

/**
 * A row of a visit.
 *
 * @param line the code of a tagged part, or the number of a line
 * @param away how many pieces are not back
 */
record ShopRow(int visit, String line, String what, String wanted, int pieces, int away)
    implements Row {

  static List<ShopRow> of(OpenedJob bench, ShopVisit visit) {
    List<ShopRow> rows = new ArrayList<>();
    for (ShopVisit.Sent sent : visit.parts()) {
      Part part = sent.part();
      int away = sent.back() ? 0 : part.pieces();
      String code = bench.digits(part);
      rows.add(new ShopRow(visit.number(), code, part.words(), sent.wanted(), part.pieces(), away));
    }
    for (ShopVisit.Line line : visit.lines()) {
      String wanted = line.line().wanted() + line.target().map(size -> ": " + size).orElse("");
      rows.add(
          new ShopRow(
              visit.number(),
              Integer.toString(line.line().line()),
              line.line().what(),
              wanted,
              line.line().count(),
              line.missing()));
    }
    return rows;
  }

  @Override
  public String text() {
    String back = away == 0 ? "back" : away + " of " + pieces + " away";
    return Answer.cells("visit " + visit, line, what, wanted, back);
  }
}
