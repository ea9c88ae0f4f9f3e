package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Words flow over pages: none is lost, none stands twice, and each page is full. */
class PagesTest {
  private static final double LINE = 10;
  private static final double EDGE = 6;
  private static final double GAP = 4;

  private record Text(String heading, List<String> lines) {
    private RowWords words() {
      return new RowWords(heading, lines, EvenLetters::ends, EvenLetters::ends);
    }

    private String all() {
      return Stream.concat(Stream.of(heading), lines.stream())
          .filter(words -> !words.isEmpty())
          .collect(Collectors.joining(" "));
    }
  }

  private static RowWords.Said said(Text text, Pages.Piece piece, double width) {
    int to = Math.min(piece.to(), text.words().count());
    return text.words().piece(piece.at().from(), to, width);
  }

  private static double height(RowWords.Said said, double width) {
    return EDGE
        + Stream.concat(Stream.of(said.heading()), said.lines().stream())
            .filter(words -> !words.isEmpty())
            .mapToDouble(words -> EvenLetters.ends(words, width).size() * LINE)
            .sum();
  }

  private static Pages.Rows rows(List<Text> texts, double width) {
    return new Pages.Rows() {
      @Override
      public int count() {
        return texts.size();
      }

      @Override
      public double gap(int item) {
        return GAP;
      }

      @Override
      public double height(Pages.Piece piece) {
        return PagesTest.height(said(texts.get(piece.at().item()), piece, width), width);
      }

      @Override
      public List<Integer> ends(Pages.Place at, int least) {
        return texts.get(at.item()).words().ends(at.from(), width, least);
      }
    };
  }

  private static List<List<Pages.Piece>> all(Pages pages, int count) {
    List<List<Pages.Piece>> all = new ArrayList<>();
    Pages.Place at = Pages.Place.FIRST;
    while (at.item() < count) {
      Pages.Place before = at;
      List<Pages.Piece> page = pages.page(at);
      assertThat(page).isNotEmpty();
      at = page.get(page.size() - 1).after();
      assertThat(before.isBefore(at)).isTrue();
      all.add(page);
    }
    return all;
  }

  private static String sentence(Random random, int words) {
    return IntStream.range(0, words)
        .mapToObj(
            at -> {
              String mark = random.nextInt(9) == 0 ? "." : random.nextInt(9) == 0 ? "," : "";
              return "abcdefghijklmno".substring(0, 1 + random.nextInt(14)) + at + mark;
            })
        .collect(Collectors.joining(" "));
  }

  private static List<Text> texts(Random random) {
    return IntStream.range(0, 1 + random.nextInt(12))
        .mapToObj(
            at ->
                new Text(
                    random.nextInt(4) == 0 ? "" : sentence(random, 1 + random.nextInt(6)),
                    random.nextInt(6) == 0
                        ? List.of("only")
                        : List.of(
                            sentence(random, 1 + random.nextInt(60)),
                            sentence(random, 1 + random.nextInt(6)))))
        .toList();
  }

  /** What is read page by page, without the signs and the headings that are said again. */
  private static String read(List<Text> texts, List<List<Pages.Piece>> pages, double width) {
    List<String> read = new ArrayList<>();
    for (Pages.Piece piece : pages.stream().flatMap(List::stream).toList()) {
      Text text = texts.get(piece.at().item());
      RowWords.Said said = said(text, piece, width);
      boolean again = piece.at().from() >= text.heading().length();
      read.add(again ? "" : said.heading());
      read.addAll(said.lines());
    }
    return String.join(" ", read).replace("…", "").replaceAll(" +", " ").strip();
  }

  @Test
  void noWordIsLostOrStandsTwiceAndTheirOrderIsKept() {
    for (int seed = 0; seed < 600; seed++) {
      Random random = new Random(seed);
      List<Text> texts = texts(random);
      double width = 18 + random.nextInt(60);
      double height = EDGE + LINE * (1 + random.nextInt(25));
      Pages pages = new Pages(rows(texts, width), height);
      String whole = texts.stream().map(Text::all).collect(Collectors.joining(" "));
      assertThat(read(texts, all(pages, texts.size()), width)).as("seed %d", seed).isEqualTo(whole);
    }
  }

  @Test
  void eachPageIsFullAndNothingStandsBelowIt() {
    for (int seed = 0; seed < 600; seed++) {
      Random random = new Random(seed);
      List<Text> texts = texts(random);
      double width = 18 + random.nextInt(60);
      double height = EDGE + LINE * (5 + random.nextInt(20));
      Pages.Rows rows = rows(texts, width);
      for (List<Pages.Piece> page : all(new Pages(rows, height), texts.size())) {
        double used = page.stream().mapToDouble(piece -> rows.height(piece) + GAP).sum() - GAP;
        assertThat(used).as("seed %d", seed).isLessThanOrEqualTo(height);
        Pages.Place next = page.get(page.size() - 1).after();
        if (next.item() < texts.size()) {
          assertThat(isFull(rows, page, height - used, height)).as("seed %d", seed).isTrue();
        }
      }
    }
  }

  /** Whether neither a further line of a text that goes on had room, nor any of the next row. */
  private static boolean isFull(
      Pages.Rows rows, List<Pages.Piece> page, double free, double height) {
    Pages.Piece last = page.get(page.size() - 1);
    if (last.to() != Pages.Piece.END) {
      double had = free + rows.height(last);
      return rows.ends(last.at(), 2).stream()
              .filter(end -> end > last.to())
              .noneMatch(end -> rows.height(new Pages.Piece(last.at(), end)) <= had)
          && rows.height(Pages.Piece.rest(last.at())) > had;
    }
    double room = free - GAP;
    double whole = rows.height(Pages.Piece.rest(last.after()));
    boolean begins =
        rows.ends(last.after(), 2).stream()
            .anyMatch(end -> rows.height(new Pages.Piece(last.after(), end)) <= room);
    boolean rather = whole <= height && room < height / 4;
    return whole > room && (!begins || rather);
  }

  @Test
  void aTextThatFitsAPageStandsOnItInOnePiece() {
    List<Text> texts =
        List.of(
            new Text("Size", List.of("standard, if never ground before: measure the journal")),
            new Text("Source", List.of("common practice, no source")));
    Pages pages = new Pages(rows(texts, 20), EDGE + 7 * LINE);
    assertThat(all(pages, 2).get(0)).containsExactly(Pages.Piece.rest(Pages.Place.FIRST));
  }

  @Test
  void noHeadingStandsAboveThePagesEndWithoutTwoLinesOfItsWords() {
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      List<Text> texts = texts(random);
      double width = 60;
      double height = EDGE + LINE * (9 + random.nextInt(9));
      Pages pages = new Pages(rows(texts, width), height);
      for (List<Pages.Piece> page : all(pages, texts.size())) {
        Pages.Piece last = page.get(page.size() - 1);
        Text text = texts.get(last.at().item());
        if (last.to() != Pages.Piece.END && last.to() >= text.heading().length()) {
          List<String> lines = said(text, last, width).lines();
          String whole = text.lines().get(0);
          boolean first = lines.size() == 1 && !List.of(whole, whole + " …").contains(lines.get(0));
          assertThat(lines).as("seed %d", seed).isNotEmpty();
          assertThat(first && EvenLetters.ends(lines.get(0), width).size() < 2)
              .as("seed %d", seed)
              .isFalse();
        }
      }
    }
  }

  @Test
  void aRowThatDoesNotPartStandsAloneWhereItIsTooHigh() {
    List<Text> texts = List.of(new Text("a", List.of()), new Text("b", List.of()));
    Pages pages = new Pages(rows(texts, 60), LINE);
    assertThat(all(pages, 2)).hasSize(2);
    assertThat(pages.count()).isEqualTo(2);
  }
}
