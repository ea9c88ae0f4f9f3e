package wherefrom.job.photos;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.job.EntryItems;
import wherefrom.job.EntryWords;
import wherefrom.job.LoggedEntry;
import wherefrom.job.pages.RecordPicture;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.record.BuildRecord;
import wherefrom.ui.sample.SampleJob;

class PhotographTest {
  private static final Subject LOBE = new Subject.AFeature(Feature.LOBE, "3EX");

  private final SampleJob sample = SampleJob.apart();
  private final Photographing photos = new Photographing(sample.job);
  private final Subject rod = Subject.ofPart(sample.part("pushrod@3EX").item());

  private List<String> files(Subject subject) {
    return Photograph.listOf(sample.job.state(), subject).stream().map(Photograph::file).toList();
  }

  @Test
  void whatCarriesNoTagHasPhotographsOfItsOwn() {
    photos.add(Optional.of(LOBE), "", "nose.png", "flat");
    photos.add(Optional.of(rod), "", "cup.png", "");
    photos.add(Optional.empty(), "", "engine.png", "");
    assertThat(files(LOBE)).containsExactly("nose.png");
    assertThat(files(rod)).containsExactly("cup.png");
    assertThat(Photograph.listAll(sample.job.state()))
        .extracting(photo -> photo.words(sample.job.state()))
        .containsExactly(
            "cylinder 3, exhaust, cam lobe", "cylinder 3, exhaust, pushrod", "the whole engine");
  }

  @Test
  void aPhotographForAQuickTestStaysWithItsPartAndItsTest() {
    photos.add(Optional.of(rod), "pushrod-roll", "roll.png", "bent");
    Photograph kept = Photograph.listOf(sample.job.state(), rod).get(0);
    assertThat(kept.check()).isEqualTo("pushrod-roll");
    assertThat(kept.story()).isEqualTo("Is it straight? bent");
    LoggedEntry logged =
        sample.job.state().standing().get(sample.job.state().standing().size() - 1);
    assertThat(EntryItems.of(logged.entry())).containsExactly(((Subject.APart) rod).item());
    assertThat(EntryWords.of(sample.job.state(), logged.entry()))
        .isEqualTo("photograph of 0012 cylinder 3, exhaust, pushrod");
  }

  @Test
  void takingItBackTakesItAwayFromItsPlace() {
    photos.add(Optional.of(LOBE), "", "nose.png", "");
    sample.job.undo();
    assertThat(files(LOBE)).isEmpty();
  }

  @Test
  void aPlaceThatTheEngineHasNotIsRefusedAndNothingIsLogged() {
    Subject ninth = new Subject.AFeature(Feature.LOBE, "9EX");
    int before = sample.job.state().standing().size();
    assertThatThrownBy(() -> photos.add(Optional.of(ninth), "", "x.png", ""))
        .hasMessageContaining("This engine has no cylinder 9, exhaust, cam lobe.");
    assertThatThrownBy(() -> photos.add(Optional.of(Subject.ofPart(999)), "", "x.png", ""))
        .hasMessage("This job has no part 999.");
    assertThat(sample.job.state().standing()).hasSize(before);
  }

  @Test
  void theBuildRecordShowsThemAndListsThem() {
    photos.add(Optional.of(LOBE), "lobe-look", "nose.png", "flat");
    BuildRecord record = BuildRecord.of(sample.job, new Somewhere());
    assertThat(record.pictures())
        .extracting(RecordPicture::title, RecordPicture::caption)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(
                "cylinder 3, exhaust, cam lobe", "Is the lobe whole? flat, 2026-05-04"));
    RecordSection table =
        record.sections().stream()
            .filter(section -> section.title().equals("Photographs"))
            .findFirst()
            .orElseThrow();
    assertThat(table.rows().get(0).cells())
        .containsExactly(
            "cylinder 3, exhaust, cam lobe", "Is the lobe whole? flat", "nose.png", "2026-05-04");
  }

  private static final class Somewhere implements Photos {
    @Override
    public String add(Path jobFolder, Path picture, Set<String> named) {
      return "x.png";
    }

    @Override
    public Set<String> names(Path picture) {
      return Set.of("x.png");
    }

    @Override
    public boolean isThere(Path jobFolder, String name) {
      return true;
    }

    @Override
    public Path locate(Path jobFolder, String name) {
      return jobFolder.resolve(name);
    }
  }
}
