package wherefrom.job.photos;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.inspection.Subject;
import wherefrom.job.BenchJob;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.Bags;
import wherefrom.job.bags.BigParts;
import wherefrom.job.entry.AtAssembly;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.ui.sample.SampleJob;

/** A folder of photographs: sorted by the tags on them, kept in one step. */
class PhotoFolderTest {
  @TempDir Path folder;

  private final BenchJob bench = BenchJob.v8();

  private final Set<String> gone = new HashSet<>();

  private final Photos photos =
      new Photos() {
        @Override
        public String add(Path job, Path picture, Set<String> named) {
          String name = named.stream().findFirst().orElse("kept-" + picture.getFileName());
          gone.remove(name);
          return name;
        }

        @Override
        public Set<String> names(Path picture) throws IOException {
          if (picture.toString().endsWith(".txt")) {
            throw new IOException(picture.getFileName() + " is not a picture that can be kept.");
          }
          return Set.of("kept-" + picture.getFileName(), "earlier-" + picture.getFileName());
        }

        @Override
        public boolean isThere(Path job, String name) {
          return !gone.contains(name);
        }

        @Override
        public Path locate(Path job, String name) {
          return job.resolve(name);
        }
      };

  private PhotoFolder reading;

  @BeforeEach
  void pictures() throws IOException {
    for (String name : List.of("a.jpg", "b.jpg", "c.jpg", "notes.txt")) {
      Files.writeString(folder.resolve(name), name);
    }
    Files.createDirectory(folder.resolve("sub"));
    reading = new PhotoFolder(bench.job, photos, this::see);
  }

  private PhotoFolder.Sorted sort() throws IOException {
    return reading.sort(List.of(folder), new TagBook(bench.job.state(), SampleJob.NAMES));
  }

  /** The first picture shows a pushrod's tag, the third two tags, the text is no picture. */
  private List<String> see(Path file) throws IOException {
    return switch (String.valueOf(file.getFileName())) {
      case "a.jpg" -> List.of(code("pushrod@3EX"));
      case "b.jpg" -> List.of("4006381333931");
      case "c.jpg" -> List.of(code("pushrod@3EX"), code("rocker@3EX"));
      default -> throw new IOException(file + " is not a picture that can be read.");
    };
  }

  private String code(String place) {
    var part = bench.job.state().getPart(bench.item(place)).part();
    return part.code(bench.job.state().engine()).digits();
  }

  @Test
  void eachPictureIsSortedByTheTagsThatItShows() throws IOException {
    PhotoFolder.Sorted sorted = sort();
    assertThat(sorted.tagged()).extracting(seen -> seen.of().size()).containsExactly(1, 2);
    assertThat(sorted.untagged())
        .extracting(seen -> String.valueOf(seen.file().getFileName()))
        .containsExactly("b.jpg");
    assertThat(sorted.left()).extracting(PhotoFolder.Left::why).hasSize(1);
    assertThat(Photograph.listAll(bench.job.state())).as("nothing is kept yet").isEmpty();
  }

  /** One picture of a bag's tag, one of a big part's, one of a bag that holds nothing yet. */
  @Test
  void bagsAndBigPartsHavePhotographsOfTheirOwn() throws IOException {
    new BigParts(bench.job).nameUsual();
    int engine = bench.job.state().engine();
    new Bags(bench.job)
        .fill(new BagFilled(3, "nuts", 10, "", 4, List.of(), "", AtAssembly.NOT_SAID));
    String head =
        BagBook.of(bench.job.state()).findBigPart(10).orElseThrow().part().code(engine).digits();
    PhotoFolder eye =
        new PhotoFolder(
            bench.job,
            photos,
            file ->
                switch (String.valueOf(file.getFileName())) {
                  case "a.jpg" -> List.of(new TagCode(TagType.BAG, engine, 3, 1).digits(), head);
                  case "b.jpg" -> List.of(new TagCode(TagType.BAG, engine, 9, 1).digits());
                  default -> List.of();
                });
    PhotoFolder.Sorted sorted =
        eye.sort(List.of(folder), new TagBook(bench.job.state(), SampleJob.NAMES));
    assertThat(sorted.tagged())
        .extracting(PhotoFolder.Seen::of)
        .containsExactly(List.of(Subject.ofBag(3), Subject.ofBigPart(10)));
    eye.record(eye.copy(sorted.tagged()));
    assertThat(Photograph.listAll(bench.job.state()))
        .extracting(photo -> photo.words(bench.job.state()))
        .containsExactly("bag 3: nuts", "left head");
    assertThat(Subject.find("bag#3")).contains(Subject.ofBag(3));
    assertThat(Subject.find("big-part#10")).contains(Subject.ofBigPart(10));
    assertThat(new Photographing(bench.job).findFault(Subject.ofBag(9)))
        .contains("This job has no bag 9.");
  }

  @Test
  void whatIsKeptIsOneStepAndNothingTwice() throws IOException {
    PhotoFolder.Sorted sorted = sort();
    assertThat(reading.record(reading.copy(sorted.seen()))).isEqualTo(4);
    Subject pushrod = Subject.ofPart(bench.item("pushrod@3EX"));
    assertThat(Photograph.listOf(bench.job.state(), pushrod)).hasSize(2);
    assertThat(Photograph.listAll(bench.job.state()))
        .filteredOn(photo -> photo.subject().equals(Optional.empty()))
        .hasSize(1);
    assertThat(reading.record(reading.copy(sorted.seen()))).as("again").isZero();
    PhotoFolder.Sorted again = sort();
    assertThat(again.seen()).as("what is kept is offered no more").isEmpty();
    assertThat(again.had()).hasSize(3);
    bench.job.undo();
    assertThat(sort().seen()).as("taken back").hasSize(3);
    assertThat(Photograph.listAll(bench.job.state())).isEmpty();
  }

  @Test
  void whatAnEarlierVersionKeptIsNotOfferedAgain() throws IOException {
    new Photographing(bench.job).add(Optional.empty(), "", "earlier-b.jpg", "");
    PhotoFolder.Sorted sorted = sort();
    assertThat(sorted.had()).containsExactly(folder.resolve("b.jpg"));
    assertThat(sorted.untagged()).isEmpty();
  }

  @Test
  void aKeptPictureThatIsGoneIsPutBackUnderItsName() throws IOException {
    new Photographing(bench.job).add(Optional.empty(), "", "earlier-b.jpg", "");
    gone.add("earlier-b.jpg");
    PhotoFolder.Sorted sorted = sort();
    assertThat(sorted.back()).containsExactly(folder.resolve("b.jpg"));
    assertThat(sorted.had()).isEmpty();
    assertThat(gone).isEmpty();
    assertThat(sort().had()).as("there again").containsExactly(folder.resolve("b.jpg"));
    assertThat(Photograph.listAll(bench.job.state())).hasSize(1);
  }
}
