package wherefrom.print;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import wherefrom.job.print.Face;
import wherefrom.job.print.ScannerFace;
import wherefrom.job.print.TagFace;
import wherefrom.parts.Orientation;
import wherefrom.parts.TagType;

/** Sets the face of a tag or card on a label. */
final class Composer {
  /** There is a line to write on. */
  private static final Set<TagType> LINED =
      EnumSet.of(TagType.PART, TagType.BASKET, TagType.BAG, TagType.BIG_PART);

  private static final String SCANNER = "SCANNER SET-UP";
  private static final double LARGEST_STEP_MM = 4;
  private static final double HOLE_MM = 4;
  private static final double HAIRLINE_MM = 0.15;

  private final LabelPlan plan;
  private final LabelLetters letters;

  Composer(LabelPlan plan, LabelLetters letters) {
    this.plan = plan;
    this.letters = letters;
  }

  /** What is drawn, from the label's top left corner. */
  List<PaperMark> compose(Face face) {
    List<PaperMark> marks = new ArrayList<>(face.match(this::tag, this::scanner));
    addHole(marks);
    return marks;
  }

  private List<PaperMark> tag(TagFace tag) {
    List<PaperMark> marks = new ArrayList<>();
    marks.add(symbol(Modules.of(tag.code())));
    marks.addAll(RowStack.set(rows(tag), plan.words(), letters));
    return marks;
  }

  private List<PaperMark> scanner(ScannerFace scanner) {
    List<PaperMark> marks = new ArrayList<>();
    marks.add(symbol(Modules.ofDigits(scanner.digits())));
    marks.addAll(words(scanner));
    return marks;
  }

  private PaperMark symbol(Modules modules) {
    return new PaperMark.Symbol(modules, plan.symbol(), plan.moduleDots(), plan.dpi());
  }

  private List<PaperMark> words(ScannerFace scanner) {
    List<String> sentences = new ArrayList<>(scanner.steps());
    sentences.add("It says " + scanner.digits() + ".");
    return new Paragraphs(plan.words(), letters).set(SCANNER, sentences, LARGEST_STEP_MM);
  }

  private List<LabelLine> rows(TagFace tag) {
    List<LabelLine> rows = new ArrayList<>();
    boolean part = tag.code().type() == TagType.PART;
    String figures = letters.bold().clean(tag.figures());
    rows.add(new LabelLine(figures, RowStyle.FIGURES, tag.fresh() ? "NEW" : ""));
    rows.add(row(kind(tag), part ? RowStyle.KIND : RowStyle.BAND));
    rows.addAll(words(tag));
    boolean end = tag.orientation() == Orientation.TOP_END;
    String mark = tag.orientation().mark().toUpperCase(Locale.ROOT);
    rows.add(row(mark, end ? RowStyle.ARROW : RowStyle.MARK));
    rows.add(row(job(tag), RowStyle.JOB));
    boolean line = LINED.contains(tag.code().type());
    if (line && !plan.wide()) {
      rows.add(LabelLine.of("", RowStyle.WRITE_ON));
    }
    boolean behind = line && plan.wide();
    rows.add(row(tag.code().typed(), behind ? RowStyle.CODE_AND_LINE : RowStyle.CODE));
    return rows;
  }

  /** What a card does or stands for is said whole: in several rows where one is too narrow. */
  private List<LabelLine> words(TagFace tag) {
    TagType type = tag.code().type();
    boolean card = type == TagType.ACTION_CARD || type == TagType.PLACE_CARD;
    return card
        ? fold(tag.words()).stream().map(words -> row(words, RowStyle.CARD_WORDS)).toList()
        : List.of(row(tag.words(), RowStyle.WORDS));
  }

  private List<String> fold(String words) {
    double most = plan.words().width() / RowStyle.CARD_WORDS.floor;
    List<String> rows = new ArrayList<>();
    for (String word : words.split(" ", -1)) {
      int last = rows.size() - 1;
      String longer = rows.isEmpty() ? word : rows.get(last) + " " + word;
      if (!rows.isEmpty() && letters.face(RowStyle.CARD_WORDS.bold).width(longer) <= most) {
        rows.set(last, longer);
      } else {
        rows.add(word);
      }
    }
    return rows;
  }

  private LabelLine row(String text, RowStyle style) {
    return LabelLine.of(letters.face(style.bold).clean(text), style);
  }

  private static String kind(TagFace tag) {
    String kind = tag.kind().toUpperCase(Locale.ROOT);
    return tag.pieces() == 1 ? kind : kind + " ×" + tag.pieces();
  }

  private static String job(TagFace tag) {
    int issue = tag.code().issue();
    String copy = issue == 1 ? "" : "issue " + issue;
    return tag.jobName().isBlank() || copy.isEmpty()
        ? tag.jobName() + copy
        : copy + " · " + tag.jobName();
  }

  /** A cross in a circle shows where to punch. */
  private void addHole(List<PaperMark> marks) {
    Box free = plan.keepOut();
    if (Math.min(free.width(), free.height()) <= 0) {
      return;
    }
    double x = free.x() + free.width() / 2;
    double y = free.y() + free.height() / 2;
    double half = Math.min(HOLE_MM, 0.6 * Math.min(free.width(), free.height())) / 2;
    marks.add(new PaperMark.Circle(new Box(x - half, y - half, 2 * half, 2 * half), HAIRLINE_MM));
    marks.add(new PaperMark.Line(x - half, y, x + half, y, HAIRLINE_MM));
    marks.add(new PaperMark.Line(x, y - half, x, y + half, HAIRLINE_MM));
  }
}
