package wherefrom.ui.inspect;

import java.util.ArrayList;
import java.util.List;
import wherefrom.inspection.Check;
import wherefrom.inspection.Printed;
import wherefrom.ui.app.WordsScreen.Paragraph;

/** All the words of a quick test: how, where, and what is seen in print of other engines. */
public final class QuickTestWords {
  private QuickTestWords() {}

  /** What there is to read, what one does first. */
  public static List<Paragraph> of(Check check) {
    List<Paragraph> all = new ArrayList<>();
    all.add(new Paragraph("How", check.how()));
    all.add(new Paragraph("Where", check.where()));
    all.add(new Paragraph("Pass", check.pass()));
    all.add(new Paragraph("Suspect", check.suspect()));
    all.add(new Paragraph("Fail", check.fail()));
    all.addAll(beyond(check));
    return all;
  }

  /** What the card itself does not say: where its answers come from, and what counts. */
  static List<Paragraph> beyond(Check check) {
    List<Paragraph> all = new ArrayList<>();
    all.add(new Paragraph("Source", check.source()));
    for (Printed printed : check.printed()) {
      all.add(new Paragraph("Printed figures", printed.text()));
    }
    all.add(
        new Paragraph(
            "What counts",
            "Service information for your exact engine outranks this tool. So does a"
                + " qualified machinist."));
    return all;
  }
}
