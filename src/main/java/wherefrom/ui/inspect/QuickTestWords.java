package wherefrom.ui.inspect;

import java.util.ArrayList;
import java.util.List;
import wherefrom.inspection.Check;
import wherefrom.inspection.Printed;
import wherefrom.ui.app.WordsScreen.Line;

/** All the words of a quick test: how, where, and what is seen in print of other engines. */
public final class QuickTestWords {
  private QuickTestWords() {}

  /** What there is to read, what one does first. */
  public static List<Line> of(Check check) {
    List<Line> all = new ArrayList<>();
    all.add(new Line("How", check.how()));
    all.add(new Line("Where", check.where()));
    all.add(new Line("Pass", check.pass()));
    all.add(new Line("Suspect", check.suspect()));
    all.add(new Line("Fail", check.fail()));
    all.addAll(beyond(check));
    return all;
  }

  /** What the card itself does not say: where its answers come from, and what counts. */
  static List<Line> beyond(Check check) {
    List<Line> all = new ArrayList<>();
    all.add(new Line("Source", check.source()));
    for (Printed printed : check.printed()) {
      all.add(new Line("Printed figures", printed.text()));
    }
    all.add(
        new Line(
            "What counts",
            "Service information for your exact engine outranks this tool. So does a"
                + " qualified machinist."));
    return all;
  }
}
