package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.CostDropped;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.ShopLineAdded;
import wherefrom.job.entry.TagsPrinted;
import wherefrom.parts.TagType;
import wherefrom.quantity.Amount;
import wherefrom.rules.consequence.ShopWork;

/** Two benches ask for the next number at one moment: each has one of its own. */
class RivalNumbersTest {
  private static final String STOCK = "a4-3x8-63.5x33.9";

  @TempDir Path folder;

  /** What the other bench does before the next act of this one, once. */
  private final AtomicReference<Optional<JobEntry>> first = new AtomicReference<>(Optional.empty());

  private Shop shop;
  private String job;

  @BeforeEach
  void begin() {
    shop = new Shop(folder, shelf -> new RivalShelf(shelf, this::does, () -> {}));
    job = shop.begin("engine");
  }

  private JobEntry does() {
    return first.getAndSet(Optional.empty()).orElse(new CostDropped(999_999, "nothing"));
  }

  private void otherBenchIsFirstWith(JobEntry entry) {
    first.set(Optional.of(entry));
  }

  private static ShopLineAdded line(int visit) {
    Optional<Amount> none = Optional.empty();
    return new ShopLineAdded(
        visit,
        1,
        "block",
        1,
        "bore all",
        none,
        none,
        true,
        ShopWork.OTHER,
        List.of(),
        Optional.empty());
  }

  private List<Integer> bags(int bench) {
    List<Integer> bags = new ArrayList<>();
    shop.change(
        job,
        open ->
            open.history().stream()
                .filter(logged -> logged.by().bench() == bench)
                .filter(logged -> logged.entry() instanceof TagsPrinted)
                .forEach(logged -> bags.addAll(((TagsPrinted) logged.entry()).items())));
    return bags;
  }

  @Test
  void aNewVisitIsNotTheOneThatAnotherBenchBegan() {
    assertThat(shop.right("shop", "new", "--job", job).lines()).containsExactly("1");
    otherBenchIsFirstWith(line(1));
    String[] add = {"--visit", "new", "--what", "crankshaft", "--count", "1", "--wanted", "polish"};
    assertThat(add("shop", "add", add)).containsExactly("visit 2");
    assertThat(add("shop", "add", add)).containsExactly("visit 3");
  }

  private List<String> add(String group, String name, String... words) {
    List<String> all = new ArrayList<>(List.of(group, name, "--job", job));
    all.addAll(List.of(words));
    return shop.right(all.toArray(String[]::new)).rows().stream().map(row -> row[0]).toList();
  }

  @Test
  void severalPartsThatGoAtOnceAreOnOneNewVisit() {
    String one = shop.codes(job, "cylinder 3, exhaust, pushrod").tag();
    String two = shop.codes(job, "cylinder 5, exhaust, pushrod").tag();
    shop.right("out", "--job", job, one, two);
    otherBenchIsFirstWith(line(1));
    assertThat(add("shop", "send", "--visit", "new", "--wanted", "measure", one, two))
        .containsExactly("visit 2", "visit 2");
    Shop.Outcome wrong =
        shop.run("shop", "send", "--job", job, "--visit", "next", "--wanted", "measure", one);
    assertThat(wrong.status()).isEqualTo(2);
  }

  @Test
  void bagTagsPrintedAheadAreNotThoseOfAnotherBench() {
    otherBenchIsFirstWith(new TagsPrinted(TagType.BAG, List.of(1, 2, 3), STOCK));
    String pdf = shop.path("bags.pdf");
    shop.right(
        "tags", "--job", job, "--stock", STOCK, "--cards", "bags", "--count", "2", "--out", pdf);
    assertThat(bags(2)).containsExactly(1, 2, 3);
    assertThat(bags(1)).containsExactly(4, 5);
    assertThat(Path.of(pdf)).isNotEmptyFile();
  }

  @Test
  void aSheetThatCouldNotGoOutTakesNoNumbers() {
    String full = "/dev/full";
    Assumptions.assumeTrue(Files.exists(Path.of(full)));
    String[] sheet = {"--stock", STOCK, "--cards", "bags", "--count", "2", "--out", full};
    List<String> all = new ArrayList<>(List.of("tags", "--job", job));
    all.addAll(List.of(sheet));
    assertThat(shop.run(all.toArray(String[]::new)).status()).isNotZero();
    assertThat(bags(1)).as("taken, and given back").containsExactly(1, 2);
    shop.change(
        job,
        open ->
            assertThat(open.state().standing())
                .extracting(LoggedEntry::entry)
                .noneMatch(TagsPrinted.class::isInstance));
  }
}
