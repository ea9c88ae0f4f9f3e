package wherefrom.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.quantity.Length;

class StockShelfTest {
  private final StockShelf shelf = StockShelf.ofReady();

  @TempDir Path folder;

  @Test
  void everyFileOfTheLabelsFolderIsOnTheShelfUnderItsName() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("labels"))) {
      List<String> names =
          files.map(file -> file.getFileName().toString().replace(".json", "")).sorted().toList();
      assertThat(names).hasSizeGreaterThanOrEqualTo(16);
      assertThat(shelf.listStocks()).extracting(LabelStock::name).containsExactlyElementsOf(names);
    }
  }

  private static Length inches(double size) {
    return Length.ofInches(BigDecimal.valueOf(size));
  }

  @Test
  void hangTagsHaveTheTradesSizes() {
    // Trade sizes 1 to 8 in inches, as label and tag merchants list them; from memory.
    double[][] inches = {
      {2.75, 1.375}, {3.25, 1.625}, {3.75, 1.875}, {4.25, 2.125},
      {4.75, 2.375}, {5.25, 2.625}, {5.75, 2.875}, {6.25, 3.125}
    };
    for (int size = 1; size <= inches.length; size++) {
      LabelStock stock = good("hang-tag-" + size);
      assertThat(stock.label().width()).isEqualTo(inches(inches[size - 1][0]));
      assertThat(stock.label().height()).isEqualTo(inches(inches[size - 1][1]));
      assertThat(stock.keepOut().millimetres()).isBetween(10.0, 10.1);
    }
  }

  @Test
  void plainCardHasTicksAndAGutterOfThreeMillimetres() {
    for (String name : List.of("card-a4-2x6-92x41", "card-letter-2x6-92x38")) {
      LabelStock stock = good(name);
      assertThat(stock.cutMarks()).isTrue();
      assertThat(stock.gapAcross().millimetres()).isEqualTo(3);
      assertThat(stock.gapDown().millimetres()).isEqualTo(3);
    }
  }

  @Test
  void theUsersOwnFileServesAsWell() throws IOException {
    Path file = folder.resolve("mine.json");
    Files.copy(Path.of("labels", "roll-2x1.json"), file);
    assertThat(shelf.find(file.toString())).isInstanceOf(StockReading.Good.class);
  }

  @Test
  void whatIsNotThereIsSaidPlainly() throws IOException {
    assertThat(sentence("a5")).contains("\"a5\"").contains(".json");
    assertThat(sentence(folder.resolve("none.json").toString())).contains("is not there");
    assertThat(sentence("\0.json")).contains("cannot be read");
    Path binary = folder.resolve("binary.json");
    Files.write(binary, new byte[] {(byte) 0xC3, (byte) 0x28});
    assertThat(sentence(binary.toString())).contains("cannot be read");
    assertThat(sentence(Files.createDirectory(folder.resolve("d.json")).toString()))
        .contains("cannot be read");
  }

  private LabelStock good(String name) {
    return ((StockReading.Good) shelf.find(name)).stock();
  }

  private String sentence(String name) {
    return ((StockReading.Bad) shelf.find(name)).faults().get(0).sentence();
  }
}
