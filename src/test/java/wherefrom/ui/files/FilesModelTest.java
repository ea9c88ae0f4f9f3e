package wherefrom.ui.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Going through folders. */
class FilesModelTest {
  @TempDir Path folder;

  @Test
  void foldersComeFirstThenTheWantedFilesHiddenOnesNever() throws IOException {
    Files.createDirectory(folder.resolve("zylinder"));
    Files.createDirectory(folder.resolve(".hidden"));
    Files.createFile(folder.resolve("b.PNG"));
    Files.createFile(folder.resolve("A.png"));
    Files.createFile(folder.resolve("notes.txt"));
    assertThat(new FilesModel(folder, List.of(".png")).list())
        .extracting(FilesModel.Line::words)
        .containsExactly("zylinder", "A.png", "b.PNG");
  }

  @Test
  void aFolderThatIsGoneGivesTheNearestOneAbove() {
    FilesModel model = new FilesModel(folder.resolve("gone/too"), List.of());
    assertThat(model.folder()).isEqualTo(folder.toAbsolutePath());
  }

  @Test
  void aPathCanBeTypedWholeOrFromHere() throws IOException {
    Path inner = Files.createDirectories(folder.resolve("a/b"));
    FilesModel model = new FilesModel(folder, List.of());
    assertThat(model.goTyped("a")).isEmpty();
    assertThat(model.goTyped(inner.toString())).isEmpty();
    assertThat(model.folder()).isEqualTo(inner);
    assertThat(model.goTyped("none"))
        .hasValueSatisfying(fault -> assertThat(fault).startsWith("There is no folder "));
    assertThat(model.goTyped("\0")).isPresent();
    assertThat(model.folder()).isEqualTo(inner);
  }

  @Test
  void aWholePathTypedBehindTheOneThatStoodThereIsWhole() throws IOException {
    Path other = Files.createDirectory(folder.resolve("other"));
    FilesModel model = new FilesModel(folder, List.of());
    assertThat(model.goTyped(folder + other.toAbsolutePath().toString())).isEmpty();
    assertThat(model.folder()).isEqualTo(other);
    assertThat(model.goTyped(other + "/none/at/all")).isPresent();
    assertThat(model.whenEmpty()).isEqualTo(other + " holds no folder.");
  }

  @Test
  void aFolderIsMadeHereAndNowhereElse() {
    FilesModel model = new FilesModel(folder, List.of());
    assertThat(model.make("../else")).isPresent();
    assertThat(model.make(" ")).isPresent();
    assertThat(model.make("Engine")).isEmpty();
    assertThat(model.folder()).isEqualTo(folder.resolve("Engine")).isDirectory();
    model.go(folder);
    assertThat(model.make("Engine")).contains("There is a folder or file Engine already.");
  }

  @Test
  void theFirstQuestionBeginsAtTheDocuments() throws IOException {
    assertThat(LastPlace.usual(folder)).isEqualTo(folder);
    Path documents = Files.createDirectory(folder.resolve("Documents"));
    assertThat(LastPlace.usual(folder)).isEqualTo(documents);
  }
}
