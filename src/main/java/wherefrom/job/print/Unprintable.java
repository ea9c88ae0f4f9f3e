package wherefrom.job.print;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import wherefrom.job.pages.RecordPicture;
import wherefrom.job.pages.RecordPlot;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.shop.ShopVisit;

/** Says before printing which names will not stand on paper as they were typed. */
public final class Unprintable {
  private static final int NAMED = 2;

  private Unprintable() {}

  /** Of tags and cards; empty where all of it prints. */
  public static Optional<String> warning(SheetPrinter printer, PrintOrder order) {
    LinkedHashSet<String> texts = new LinkedHashSet<>(List.of(order.title()));
    for (Face face : order.faces()) {
      if (face instanceof TagFace tag) {
        texts.addAll(List.of(tag.jobName(), tag.words(), tag.figures()));
      }
    }
    return warning(printer, texts);
  }

  /** Of a build record; empty where all of it prints. */
  public static Optional<String> warning(SheetPrinter printer, BuildRecord record) {
    LinkedHashSet<String> texts = new LinkedHashSet<>(List.of(record.job(), record.engine()));
    for (RecordSection section : record.sections()) {
      section.rows().forEach(row -> texts.addAll(row.cells()));
    }
    for (RecordPlot plot : record.plots()) {
      texts.addAll(List.of(plot.title(), plot.sentence()));
    }
    for (RecordPicture picture : record.pictures()) {
      texts.addAll(List.of(picture.title(), picture.caption()));
    }
    return warning(printer, texts);
  }

  /** Of a machine-shop slip; empty where all of it prints. */
  public static Optional<String> warning(SheetPrinter printer, String jobName, ShopVisit visit) {
    LinkedHashSet<String> texts = new LinkedHashSet<>(List.of(jobName));
    visit.parts().forEach(sent -> texts.add(sent.wanted()));
    visit.lines().forEach(line -> texts.addAll(List.of(line.line().what(), line.line().wanted())));
    return warning(printer, texts);
  }

  /** Of any words; empty where all of them print. */
  public static Optional<String> warning(SheetPrinter printer, Collection<String> texts) {
    List<String> named = new ArrayList<>();
    StringBuilder lacking = new StringBuilder();
    int more = 0;
    for (String text : texts) {
      String signs = printer.lacking(text);
      if (signs.isEmpty()) {
        continue;
      }
      signs
          .codePoints()
          .mapToObj(Character::toString)
          .filter(sign -> lacking.indexOf(sign) < 0)
          .forEach(lacking::append);
      if (named.size() < NAMED) {
        named.add("\"" + text + "\"");
      } else {
        more++;
      }
    }
    return named.isEmpty()
        ? Optional.empty()
        : Optional.of(sentence(named, more, lacking.toString()));
  }

  private static String sentence(List<String> named, int more, String lacking) {
    String others = more == 0 ? "" : " and " + more + " more";
    boolean one = named.size() + more == 1;
    return String.join(", ", named)
        + others
        + (one ? " does not print whole" : " do not print whole")
        + ": a question mark will stand for "
        + String.join(" ", lacking.codePoints().mapToObj(Character::toString).toList())
        + ". Latin, Greek and Cyrillic letters print. Use those, or write it by hand.";
  }
}
