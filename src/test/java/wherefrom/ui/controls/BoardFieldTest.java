package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BoardFieldTest {
  @Test
  void aQuestionEndsInItsOwnMark() {
    assertThat(BoardField.before("Which folder?")).isEqualTo("Which folder? ");
    assertThat(BoardField.before("Care!")).isEqualTo("Care! ");
    assertThat(BoardField.before("Name of the folder")).isEqualTo("Name of the folder: ");
  }
}
