package wherefrom.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Line2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wherefrom.files.Outgoing;
import wherefrom.job.BenchJob;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.ToFitSheet;

/** A known length of the bench plan, in the points of its PDF: 72 to the inch of 25.4 mm. */
class PlanScaleTest {
  private static final double MM = 72 / 25.4;
  private static final double EXACT = 0.001;

  @TempDir Path folder;

  private Strokes page(PaperSize paper, int page) throws IOException {
    Path pdf = folder.resolve("bench.pdf");
    ToFitSheet plan = ToFitSheet.of(BenchJob.v8().job.state());
    new FileReports().writeBenchPlan(plan, paper, Outgoing.replacing(pdf));
    return Strokes.of(pdf, page);
  }

  /** The rule lies 14 mm below the upper edge and ends 10 mm before the right one. */
  private static List<Line2D> rule(Strokes strokes, PaperSize paper) {
    double y = (paper.width() - 14) * MM;
    return strokes.straight().stream()
        .filter(line -> Math.abs(line.getY2() - y) < EXACT)
        .filter(line -> Math.min(line.getX1(), line.getX2()) > paper.height() / 2 * MM - 20)
        .toList();
  }

  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void theRuleIsAHundredMillimetersAndEachMarkTen(PaperSize paper) throws IOException {
    for (int page = 1; page <= 2; page++) {
      List<Line2D> rule = rule(page(paper, page), paper);
      List<Line2D> level = rule.stream().filter(line -> line.getY1() == line.getY2()).toList();
      assertThat(level).hasSize(1);
      assertThat(level.get(0).getX2() - level.get(0).getX1()).isCloseTo(283.465, within(EXACT));
      assertThat(level.get(0).getX2()).isCloseTo((paper.height() - 10) * MM, within(EXACT));
      List<Double> marks =
          rule.stream()
              .filter(line -> line.getX1() == line.getX2())
              .map(Line2D::getX1)
              .sorted()
              .toList();
      assertThat(marks).hasSize(11);
      for (int at = 1; at < marks.size(); at++) {
        assertThat(marks.get(at) - marks.get(at - 1)).isCloseTo(10 * MM, within(EXACT));
      }
    }
  }

  /** As large as the sheet allows: from edge to edge, but for a hair at the ends of the engine. */
  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void theEngineFillsTheSheetBetweenItsEdges(PaperSize paper) throws IOException {
    double foot = 18 * MM;
    double head = (paper.width() - 22) * MM;
    double wide = page(paper, 1).wide(foot, head);
    double room = (paper.height() - 20) * MM;
    assertThat(wide).isBetween(0.995 * room, room + EXACT);
  }
}
