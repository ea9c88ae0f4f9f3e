package wherefrom.print;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.print.Nudge;

/**
 * A page of outlines and two rulers, to see how the paper lies: the rulers show the printer's
 * scale, the outlines where the labels come to lie.
 */
final class TestPage {
  private static final double OUTLINE_MM = 0.2;
  private static final double INSIDE_MM = 1;
  private static final double INSET_MM = 6;
  private static final double CAP_MM = 2.2;

  private final LabelStock stock;
  private final LabelLetters letters;

  TestPage(LabelStock stock, LabelLetters letters) {
    this.stock = stock;
    this.letters = letters;
  }

  List<PdfPages.Placed> content(Nudge nudge) {
    List<PaperMark> labels = new ArrayList<>();
    for (int index = 0; index < stock.labelsPerPage(); index++) {
      addLabel(labels, outline(index), index + 1);
    }
    return List.of(
        new PdfPages.Placed(labels, nudge.rightMm(), nudge.downMm()),
        new PdfPages.Placed(rulers(), 0, 0));
  }

  /** A label that fills its page has no visible edge to print on: its outline stands inside. */
  private Box outline(int index) {
    Box box = stock.labelBox(index);
    double in = stock.labelsPerPage() == 1 ? INSIDE_MM : 0;
    return new Box(box.x() + in, box.y() + in, box.width() - 2 * in, box.height() - 2 * in);
  }

  private void addLabel(List<PaperMark> marks, Box box, int number) {
    marks.add(new PaperMark.Line(box.x(), box.y(), box.right(), box.y(), OUTLINE_MM));
    marks.add(new PaperMark.Line(box.x(), box.bottom(), box.right(), box.bottom(), OUTLINE_MM));
    marks.add(new PaperMark.Line(box.x(), box.y(), box.x(), box.bottom(), OUTLINE_MM));
    marks.add(new PaperMark.Line(box.right(), box.y(), box.right(), box.bottom(), OUTLINE_MM));
    marks.add(
        letters.words(Integer.toString(number), true, box.x() + 1.5, box.bottom() - 1.5, CAP_MM));
  }

  private List<PaperMark> rulers() {
    double width = stock.page().width().millimetres();
    double height = stock.page().height().millimetres();
    double inset = Math.min(INSET_MM, 0.2 * Math.min(width, height));
    int across = Ruler.fitting(width - 2 * inset);
    int down = Ruler.fitting(height - 2 * inset);
    double x = Math.max(inset, (width - across) / 2);
    double y = Math.max(inset, (height - down) / 2);
    List<PaperMark> marks = new ArrayList<>();
    marks.addAll(Ruler.across(x, y, across));
    marks.addAll(Ruler.down(x, y, down));
    Box beside = new Box(x + 2, y + 2, width - x - 2 - inset, height - y - 2 - inset);
    Box room = stock.labelsPerPage() == 1 ? beside : inFirstLabel();
    marks.addAll(new Paragraphs(room, letters).set("", sentences(across, down), CAP_MM));
    return marks;
  }

  private Box inFirstLabel() {
    Box label = stock.labelBox(0);
    return new Box(label.x() + 2, label.y() + 2, label.width() - 4, label.height() - 7);
  }

  private List<String> sentences(int across, int down) {
    String lie =
        stock.labelsPerPage() == 1
            ? "The frame must stand 1 mm inside the edge all round."
            : "Hold this page and a sheet of labels against the light.";
    return List.of(
        "Measure the rulers: " + across + " mm across, " + down + " mm down.",
        "Wrong length? Print at 100 %, actual size.",
        lie,
        "Off to one side? Move the print, half a millimeter a step.");
  }
}
