package wherefrom.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;

class JoinedTablesTest {
  private static RecordSection.Row row(boolean open, String... cells) {
    return new RecordSection.Row(List.of(cells), open);
  }

  private static RecordSection table(RecordTable which, String empty, RecordSection.Row... rows) {
    return new RecordSection(which, List.of("what", "found", "card"), List.of(rows), empty);
  }

  @Test
  void whatIsEmptyIsOneRowEachBelowTheOthers() {
    RecordSection money = table(RecordTable.MONEY, "", row(false, "oil", "46.50 EUR", ""));
    List<RecordSection> joined =
        JoinedTables.of(
            List.of(
                table(RecordTable.WEIGHTS, "Nothing was weighed."),
                money,
                table(RecordTable.RING_FILING, "No ring gap was typed: NOT CHECKED here.")));
    assertThat(joined).hasSize(2).first().isEqualTo(money);
    assertThat(joined.get(1).rows())
        .containsExactly(
            row(false, "Weights", "Nothing was weighed."),
            row(true, "Ring filing", "No ring gap was typed: NOT CHECKED here."));
  }

  @Test
  void aTableOfNothingButNotCheckedIsOneRowThatStandsOut() {
    RecordSection timing =
        table(
            RecordTable.TIMING,
            "",
            row(true, "chain", "NOT CHECKED", ""),
            row(true, "slack", "NOT CHECKED", ""));
    assertThat(JoinedTables.of(List.of(timing)))
        .singleElement()
        .satisfies(
            one ->
                assertThat(one.rows())
                    .containsExactly(row(true, "Timing", "chain; slack: NOT CHECKED")));
  }

  @Test
  void aTableThatSaysMoreStaysWhole() {
    RecordSection begun =
        table(
            RecordTable.TIMING,
            "",
            row(true, "chain", "NOT CHECKED", ""),
            row(false, "slack", "6 deg", ""));
    RecordSection tools =
        table(RecordTable.TOOLS, "", row(true, "dial", "0.001 in", "NOT CHECKED"));
    assertThat(JoinedTables.of(List.of(begun, tools))).containsExactly(begun, tools);
  }
}
