package wherefrom.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PhotoAdded;
import wherefrom.logbook.LogbookFile;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/** The demo can be made anew at any time, and is a job that could have been. */
class DemoMakerTest {
  private static final Path SHIPPED = Path.of("demo-data");

  @TempDir Path folder;

  private static List<JobEntry> entries(Path demo) {
    try (OpenJob job = new OpenJob(LogbookFile.read(demo), Clock.systemUTC())) {
      // A picture's name is the sum of its bytes, which another Java may pack otherwise.
      return job.history().stream().map(LoggedEntry::entry).map(DemoMakerTest::nameless).toList();
    }
  }

  private static JobEntry nameless(JobEntry entry) {
    return entry instanceof PhotoAdded photo
        ? new PhotoAdded(photo.item(), "picture", photo.caption())
        : entry;
  }

  @Test
  void theDemoThatIsShippedIsTheOneThatIsMade() throws IOException {
    Path made = folder.resolve("demo");
    DemoMaker.main(new String[] {made.toString()});
    assertThat(entries(made)).isEqualTo(entries(SHIPPED));
  }

  @Test
  void noCapGoesOnBeforeBothItsShells() {
    Set<String> fitted = new HashSet<>();
    List<String> caps = new ArrayList<>();
    for (JobEntry entry : entries(SHIPPED)) {
      if (entry instanceof PartFitted fit) {
        Place place = fit.place();
        fitted.add(place.key());
        if (place.kind() == PartKind.MAIN_CAP || place.kind() == PartKind.ROD_CAP) {
          caps.add(place.key());
          String lower = place.key().replace("-cap@", "-shell@");
          assertThat(fitted).contains(lower, lower.replaceAll("L$", "U"));
        }
      }
    }
    assertThat(caps).hasSize(9);
  }
}
