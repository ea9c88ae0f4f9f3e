package wherefrom.print;

import java.util.ArrayList;
import java.util.List;

/** Sets sentences under a heading, each broken into lines, as large as the box lets them be. */
final class Paragraphs {
  private static final double SMALLEST_CAP = 1;
  private static final double STEP = 0.96;
  private static final double LINE_PITCH = 1.75;
  private static final double AFTER = 0.6;
  private static final double HEADING = 1.5;
  private static final double SLACK = 0.001;

  private final Box box;
  private final LabelLetters letters;

  Paragraphs(Box box, LabelLetters letters) {
    this.box = box;
    this.letters = letters;
  }

  /**
   * What is drawn. Where even the smallest letters leave no room, the last lines are missing.
   *
   * @param heading in bold; empty for none
   * @param largest height of the capitals where there is room
   */
  List<PaperMark> set(String heading, List<String> sentences, double largest) {
    double cap = largest;
    List<PaperMark> marks = attempt(heading, sentences, cap);
    while (bottom(marks) > box.bottom() && cap > SMALLEST_CAP) {
      cap = Math.max(SMALLEST_CAP, cap * STEP);
      marks = attempt(heading, sentences, cap);
    }
    marks.removeIf(mark -> mark.box().bottom() > box.bottom() + SLACK);
    return marks;
  }

  private List<PaperMark> attempt(String heading, List<String> sentences, double cap) {
    List<PaperMark> marks = new ArrayList<>();
    double y = box.y() + cap;
    if (!heading.isEmpty()) {
      double large = Math.min(HEADING * cap, box.width() / letters.bold().width(heading));
      y = box.y() + large;
      marks.add(letters.words(heading, true, box.x(), y, large));
      y += (LINE_PITCH + AFTER) * cap;
    }
    for (String sentence : sentences) {
      for (String line : Wrap.lines(letters.regular(), sentence, box.width() / cap)) {
        marks.add(letters.words(line, false, box.x(), y, cap));
        y += LINE_PITCH * cap;
      }
      y += AFTER * cap;
    }
    return marks;
  }

  private static double bottom(List<PaperMark> marks) {
    return marks.stream().mapToDouble(mark -> mark.box().bottom()).max().orElse(0);
  }
}
