package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.OpenJob;
import wherefrom.job.shelf.Shelf;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.PartKind;
import wherefrom.parts.TagCode;
import wherefrom.quantity.UnitSystem;

/** The tags of the other jobs on a shelf, for a reader that knows no better. */
class PrintedElsewhereTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-01T10:00:00Z"), ZoneOffset.UTC);

  @TempDir Path shop;

  /** A job's engine and what it printed. */
  private record Printed(int engine, List<TagCode> tags) {}

  private static Printed begin(Shelf shelf, String name) {
    try (OpenJob open =
        shelf.create(
            new Shelf.NewJob(
                name, ReadyLayouts.all().get(0), PartKind.alwaysOn(), UnitSystem.INCH))) {
      List<TagCode> all = new TagBook(open.state(), shelf).issued();
      int engine = open.state().engine();
      return new Printed(engine, all.stream().filter(code -> code.engine() == engine).toList());
    }
  }

  @Test
  void allThatOtherJobsPrintedIsListedAndNothingOfTheOpenOne() {
    List<Integer> numbers = new ArrayList<>(List.of(3, 700_001, 4_000_003));
    Shelf shelf = new FileShelf(shop, CLOCK, () -> numbers.remove(0));
    Printed open = begin(shelf, "open");
    assertThat(shelf.listPrinted(open.engine())).isEmpty();
    Printed second = begin(shelf, "second");
    Printed third = begin(shelf, "third");
    assertThat(shelf.listPrinted(open.engine()))
        .doesNotContainAnyElementsOf(open.tags())
        .doesNotHaveDuplicates()
        .containsAll(second.tags())
        .containsAll(third.tags())
        .hasSize(second.tags().size() + third.tags().size());
  }
}
