package wherefrom.report;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.shop.ShopVisit;

/** The tables of a machine-shop slip: what goes, what is wanted, what must not get lost. */
final class SlipTables {
  private SlipTables() {}

  static List<RecordSection> of(ShopVisit visit) {
    List<RecordSection.Row> rows = new ArrayList<>();
    for (ShopVisit.Sent sent : visit.parts()) {
      rows.add(
          row(Integer.toString(sent.part().pieces()), sent.part().words(), sent.wanted(), "", ""));
    }
    for (ShopVisit.Line line : visit.lines()) {
      rows.add(
          row(
              Integer.toString(line.line().count()),
              line.line().what(),
              line.line().wanted(),
              line.target().orElse(""),
              ""));
    }
    List<RecordSection.Row> keep = visit.doNotLose().stream().map(words -> row(words, "")).toList();
    return List.of(
        new RecordSection(
            "What goes and what is wanted",
            List.of("pieces", "what", "wanted", "size", "Counted by"),
            rows,
            "Nothing is on this slip."),
        new RecordSection(
            "DO NOT LOSE: these go back to one place only",
            List.of("what", "seen"),
            keep,
            "Nothing is marked."));
  }

  private static RecordSection.Row row(String... cells) {
    return new RecordSection.Row(List.of(cells), false);
  }
}
