package wherefrom.ui.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The licenses as they are read on the glass. */
class LicenseTextTest {
  private static List<String> paragraphs(String title) {
    return LicenseText.ALL.stream()
        .filter(text -> text.title().equals(title))
        .findFirst()
        .orElseThrow()
        .paragraphs();
  }

  @Test
  void aTableIsReadLineByLine() {
    String whole = String.join(" ", paragraphs("FFmpeg and its parts"));
    assertThat(whole)
        .contains("libmp3lame: LAME, LGPL-2 or later. libspeex: Speex, BSD, 3 clauses.")
        .contains("libopencore-amrnb, -amrwb: opencore-amr, Apache-2.0.")
        .contains("OpenH264: 2004-2013, 2022 Cisco Systems.")
        .contains("2005 Christopher Montgomery;");
  }

  @Test
  void noParagraphOfATableBeginsWithinALine() {
    assertThat(paragraphs("FFmpeg and its parts"))
        .noneMatch(one -> one.startsWith("-amrwb") || one.startsWith("3 clauses"));
  }

  @Test
  void whatIsNoTableStaysAsItIs() {
    assertThat(String.join(" ", paragraphs("GPL 2 with Classpath Exception")))
        .contains("share and change it. By contrast, the GNU General Public License");
  }
}
