package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.HashSet;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wherefrom.demo.DemoJob;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;

/** Engine numbers are drawn so that what is typed from another engine's tag is told. */
class EngineNumbersTest {

  private static EngineNumbers numbers(int seed) {
    return new EngineNumbers(new Random(seed)::nextInt);
  }

  private static Set<String> typed(int engine, TagType... types) {
    Set<String> codes = new HashSet<>();
    for (TagType type : types) {
      for (int item = 1; item <= 300; item++) {
        codes.add(new TagCode(type, engine, item, 1).typed());
      }
    }
    return codes;
  }

  /** The pair that was met: 8044137 - 3681950 is 97 times 44971. */
  @Test
  void numbersAlikeModulo97ShareEveryTypedCode() {
    assertThat(typed(3681950, TagType.PART)).isEqualTo(typed(8044137, TagType.PART));
    assertThat(TagCode.typedAlike(3681950, TagType.PART, 8044137, TagType.PART)).isTrue();
  }

  /** What is reckoned, against codes that are made in full. */
  @Test
  void alikeIsToldAsTheCodesHaveIt() {
    Random random = new Random(5);
    int alike = 0;
    for (int pair = 0; pair < 3_000; pair++) {
      int one = 1 + random.nextInt(TagCode.MOST_ENGINE);
      int other = 1 + random.nextInt(TagCode.MOST_ENGINE);
      TagType type = TagType.values()[random.nextInt(TagType.values().length)];
      TagType otherType = TagType.values()[random.nextInt(TagType.values().length)];
      int item = 1 + random.nextInt(TagCode.MOST_ITEM);
      int issue = 1 + random.nextInt(TagCode.MOST_ISSUE);
      boolean same =
          new TagCode(type, one, item, issue)
              .typed()
              .equals(new TagCode(otherType, other, item, issue).typed());
      assertThat(TagCode.typedAlike(one, type, other, otherType)).isEqualTo(same);
      alike += same ? 1 : 0;
    }
    assertThat(alike).isPositive();
  }

  /** A shelf of 97 jobs, begun one after the other: no two share the codes of their parts. */
  @Test
  void noTwoOfNinetySixJobsShareTheTypedCodesOfTheirParts() {
    Set<Integer> shelf = new TreeSet<>();
    EngineNumbers numbers = numbers(1);
    while (shelf.size() < 96) {
      shelf.add(numbers.next(shelf));
    }
    assertThat(shelf.stream().map(engine -> engine % 97)).doesNotHaveDuplicates();
  }

  /** On a shelf of few jobs no tag of one has the typed code of any tag of another. */
  @Test
  void whereThereIsRoomNoSortOfTagSharesItsCodeWithAnother() {
    TagType[] all = {TagType.PART, TagType.PLACE_CARD, TagType.BASKET};
    for (int seed = 0; seed < 50; seed++) {
      Map<Integer, Set<String>> shelf = new TreeMap<>();
      shelf.put(DemoJob.ENGINE, typed(DemoJob.ENGINE, all));
      for (int job = 0; job < 5; job++) {
        int next = numbers(seed).next(shelf.keySet());
        Set<String> codes = typed(next, all);
        assertThat(shelf.values()).allMatch(others -> Collections.disjoint(others, codes));
        IntStream.rangeClosed(1, 6)
            .mapToObj(item -> new TagCode(TagType.ACTION_CARD, 0, item, 1).typed())
            .forEach(card -> assertThat(codes).doesNotContain(card));
        shelf.put(next, codes);
      }
    }
  }

  /** All 97 are used: the number differs still, and the typed code asks. */
  @Test
  void whereAllAreUsedTheNumberAloneDiffers() {
    Set<Integer> shelf = new TreeSet<>();
    IntStream.rangeClosed(1, 97).forEach(shelf::add);
    int next = numbers(3).next(shelf);
    assertThat(shelf).doesNotContain(next);
  }

  @Test
  void theDemosNumberIsThatOfItsLogbook() throws Exception {
    assertThat(Openings.get(java.nio.file.Path.of("demo-data")).engine()).isEqualTo(DemoJob.ENGINE);
  }
}
