package wherefrom.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;

class ColumnWidthsTest {
  private static final double SIZE = 8;
  private static final double GAP = 6;
  private static final double PAGE = 500;
  private final PDDocument document = new PDDocument();

  @AfterEach
  void close() throws IOException {
    document.close();
  }

  private static RecordSection table(boolean open, String... cells) {
    List<String> heads = Arrays.stream(cells).map(cell -> "head").toList();
    List<RecordSection.Row> rows = new ArrayList<>();
    rows.add(new RecordSection.Row(List.of(cells), open));
    return new RecordSection(RecordTable.TOOLS, heads, rows, "");
  }

  private List<List<String>> wrapped(RecordSection table) throws IOException {
    PageLetters regular = PageLetters.regular(document);
    PageLetters bold = PageLetters.bold(document);
    double[] widths = new ColumnWidths(regular, bold, SIZE, GAP).of(table, PAGE);
    assertThat(Arrays.stream(widths).sum()).isCloseTo(PAGE, within(0.01));
    RecordSection.Row row = table.rows().get(0);
    List<List<String>> cells = new ArrayList<>();
    for (int at = 0; at < widths.length; at++) {
      PageLetters letters = row.open() ? bold : regular;
      cells.add(letters.wrap(row.cells().get(at), SIZE, widths[at] - GAP));
    }
    return cells;
  }

  private static final String LONG = "a long remark of many words about what was seen ".repeat(12);

  @Test
  void datesBesideLongWordsStayWhole() throws IOException {
    for (boolean open : new boolean[] {false, true}) {
      List<List<String>> cells =
          wrapped(table(open, LONG, LONG, "2026-03-14", LONG, LONG, "2026-04-13"));
      assertThat(cells.get(2)).containsExactly("2026-03-14");
      assertThat(cells.get(5)).containsExactly("2026-04-13");
    }
  }

  @Test
  void shortCellsStayOnOneLine() throws IOException {
    List<List<String>> cells = wrapped(table(true, "row 10", LONG, LONG, "not so", LONG));
    assertThat(cells.get(0)).containsExactly("row 10");
    assertThat(cells.get(3)).containsExactly("not so");
  }

  @Test
  void aWordThatIsTooLongForThePageLeavesTheDatesWhole() throws IOException {
    String name = "0123456789abcdef".repeat(8);
    List<List<String>> cells = wrapped(table(false, name, name, name, "2026-03-14"));
    assertThat(cells.get(3)).containsExactly("2026-03-14");
    assertThat(String.join("", cells.get(0))).isEqualTo(name);
  }

  /** Cells that stand in one line need no more room while another breaks. */
  @Test
  void aNoteIsNotBrokenWhereOtherColumnsHaveRoom() throws IOException {
    List<RecordSection.Row> rows = new ArrayList<>();
    String note = "Total at least 986.59 EUR; at most 13.41 EUR left. Two are to be priced.";
    rows.add(new RecordSection.Row(List.of("Budget", "", "1000.00 EUR", note), false));
    for (int row = 0; row < 20; row++) {
      String[] cells = {"bearing shells, mains", "saved by reuse", "138.00 EUR", ""};
      rows.add(new RecordSection.Row(List.of(cells), false));
    }
    List<String> heads = List.of("what", "state", "amount", "note");
    RecordSection table = new RecordSection(RecordTable.MONEY, heads, rows, "");
    assertThat(wrapped(table)).allSatisfy(cell -> assertThat(cell).hasSizeLessThan(2));
  }

  @Test
  void figuresKeepTheirUnitsAndPlacesTheirNames() throws IOException {
    PageLetters letters = PageLetters.regular(document);
    String text = "runout 0.00090 in ± 0.00013 in, at 3 EX, R4 LO, 85.00 EUR, 200.0 lb in all";
    assertThat(letters.words(text))
        .containsExactly(
            "runout",
            "0.00090 in",
            "± 0.00013 in,",
            "at",
            "3 EX,",
            "R4 LO,",
            "85.00 EUR,",
            "200.0 lb",
            "in",
            "all");
    for (double width = 60; width < 300; width += 7) {
      assertThat(String.join(" ", letters.wrap(text, SIZE, width))).isEqualTo(text);
    }
  }

  @Test
  void theColumnWithTheMostWordsGetsTheMostRoom() throws IOException {
    List<List<String>> cells = wrapped(table(false, "no", LONG, "2026-03-14", "yes"));
    int even = PageLetters.regular(document).wrap(LONG, SIZE, PAGE / 4 - GAP).size();
    assertThat(cells.get(1).size()).isLessThan(even / 2);
  }
}
