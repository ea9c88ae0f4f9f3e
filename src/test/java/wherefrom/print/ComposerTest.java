package wherefrom.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.print.Face;
import wherefrom.job.print.TagFace;
import wherefrom.job.print.TagFaces;
import wherefrom.parts.PartKind;
import wherefrom.parts.TagType;

class ComposerTest {
  private static final LabelLetters LETTERS = LabelLetters.load();
  private static final double LEAST_WORDS_MM = 1.5;
  private static final String LONG_NAME = "The engine of the green van that stood in the orchard";

  static Stream<LabelStock> stocks() {
    return StockShelf.ofReady().listStocks().stream();
  }

  private static LabelPlan plan(LabelStock stock) {
    return LabelPlan.find(stock, stock.dpi()).orElseThrow();
  }

  private static List<Face> faces() {
    List<Face> faces = new ArrayList<>(SampleTags.parts());
    faces.addAll(SampleTags.placeCards());
    faces.addAll(TagFaces.actions());
    faces.addAll(SampleTags.baskets(12));
    faces.addAll(SampleTags.parts(LONG_NAME).subList(0, 4));
    faces.addAll(SampleTags.parts("").subList(0, 1));
    faces.add(SampleTags.fullest());
    faces.add(SampleTags.scanner());
    return faces;
  }

  private static List<PaperMark.Words> words(LabelStock stock, Face face) {
    return new Composer(plan(stock), LETTERS)
        .compose(face).stream()
            .filter(PaperMark.Words.class::isInstance)
            .map(PaperMark.Words.class::cast)
            .toList();
  }

  @ParameterizedTest
  @MethodSource("stocks")
  void nothingLeavesTheLabelOrCoversTheSymbolOrAnotherWord(LabelStock stock) {
    LabelPlan plan = plan(stock);
    for (Face face : faces()) {
      List<PaperMark> marks = new Composer(plan, LETTERS).compose(face);
      for (PaperMark mark : marks) {
        assertThat(plan.label().contains(mark.box())).as("%s %s", face, mark).isTrue();
        boolean symbol = mark instanceof PaperMark.Symbol;
        assertThat(symbol || !mark.box().overlaps(plan.symbol())).as("%s", mark).isTrue();
      }
      List<PaperMark.Words> words = words(stock, face);
      for (int one = 0; one < words.size(); one++) {
        for (int other = one + 1; other < words.size(); other++) {
          assertThat(words.get(one).box().overlaps(words.get(other).box()))
              .as("%s over %s on %s", words.get(one), words.get(other), stock.name())
              .isFalse();
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("stocks")
  void thePlaceIsAtLeastFiveMillimetresHighAndTheCodeFour(LabelStock stock) {
    for (var face : SampleTags.parts()) {
      assertThat(capOf(stock, face, face.figures())).isGreaterThanOrEqualTo(5 - 1e-6);
      assertThat(capOf(stock, face, face.code().typed())).isGreaterThanOrEqualTo(4 - 1e-6);
    }
  }

  private static double capOf(LabelStock stock, Face face, String text) {
    return words(stock, face).stream()
        .filter(words -> words.text().equals(text))
        .mapToDouble(PaperMark.Words::capMm)
        .findFirst()
        .orElse(0);
  }

  @ParameterizedTest
  @MethodSource("stocks")
  void kindCountMarkNewnessAndIssueAreNeverLeftOutOrShortened(LabelStock stock) {
    List<String> shown =
        words(stock, SampleTags.fullest()).stream().map(PaperMark.Words::text).toList();
    assertThat(shown).contains("7 EX", "NEW", "VALVE SPRING ×3", "THIS END UP", "0188 98");
    assertThat(shown).anyMatch(text -> text.startsWith("issue 2 · Ö½°"));
    List<PaperMark> marks = new Composer(plan(stock), LETTERS).compose(SampleTags.fullest());
    assertThat(marks).hasAtLeastOneElementOfType(PaperMark.ArrowUp.class);
    assertThat(marks).hasAtLeastOneElementOfType(PaperMark.Line.class);
    assertThat(words(stock, SampleTags.parts().get(0)))
        .extracting(PaperMark.Words::text)
        .contains("SAME WAY AROUND")
        .doesNotContain("NEW");
  }

  @Test
  void aLongJobNameIsShortenedVisibly() {
    LabelStock stock = StockShelf.ofReady().listStocks().get(0);
    assertThat(words(stock, SampleTags.parts(LONG_NAME).get(0)))
        .extracting(PaperMark.Words::text)
        .filteredOn(text -> text.startsWith("The engine"))
        .singleElement()
        .asString()
        .endsWith("…");
  }

  @ParameterizedTest
  @MethodSource("stocks")
  void theScannerCardSaysEverythingOnEveryStock(LabelStock stock) {
    String all =
        String.join(
            " ", words(stock, SampleTags.scanner()).stream().map(PaperMark.Words::text).toList());
    assertThat(all).startsWith("SCANNER SET-UP").contains("Enter").endsWith("0123456789.");
  }

  /** Cards are read from the bench: what they do or stand for is whole on every stock. */
  @ParameterizedTest
  @MethodSource("stocks")
  void theWordsOfActionAndPlaceCardsAreWholeAndLargeEnough(LabelStock stock) {
    List<TagFace> cards = new ArrayList<>(TagFaces.actions());
    for (Layout layout : ReadyLayouts.all()) {
      cards.addAll(SampleTags.placeCards(layout, EnumSet.allOf(PartKind.class)));
    }
    List<String> faults = new ArrayList<>();
    for (TagFace card : cards) {
      boolean place = card.code().type() == TagType.PLACE_CARD;
      if (capOf(stock, card, card.figures()) < (place ? 5 : 4) - 1e-6) {
        faults.add(card.figures() + ": its figures");
      }
      if (!told(stock, card).contains(card.words())) {
        faults.add(card.figures() + ": " + told(stock, card));
      }
    }
    assertThat(faults).isEmpty();
  }

  /** All that stands on a card in letters of a millimeter and a half at least, in order. */
  private static String told(LabelStock stock, Face card) {
    return words(stock, card).stream()
        .filter(words -> words.capMm() >= LEAST_WORDS_MM - 1e-6)
        .map(PaperMark.Words::text)
        .collect(Collectors.joining(" "));
  }
}
