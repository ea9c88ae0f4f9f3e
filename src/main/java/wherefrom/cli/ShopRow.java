package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.shop.ShopVisit;

/**
 * A row of a visit.
 *
 * @param line the code of a tagged part, or the number of a line
 * @param away how many pieces are not back
 */
record ShopRow(int visit, String line, String what, String wanted, int pieces, int away) {

  static List<ShopRow> of(Bench bench, ShopVisit visit) {
    List<ShopRow> rows = new ArrayList<>();
    for (ShopVisit.Sent sent : visit.parts()) {
      String digits = bench.book().of(sent.part()).digits();
      int pieces = sent.part().pieces();
      int away = sent.back() ? 0 : pieces;
      rows.add(
          new ShopRow(visit.number(), digits, sent.part().words(), sent.wanted(), pieces, away));
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

  Fields fields() {
    return Fields.of("visit", visit)
        .and("line", line)
        .and("what", what)
        .and("wanted", wanted)
        .and("pieces", pieces)
        .and("away", away);
  }

  String cells() {
    return Answer.cells(
        "visit " + visit,
        line,
        what,
        wanted,
        away == 0 ? "back" : away + " of " + pieces + " away");
  }
}
