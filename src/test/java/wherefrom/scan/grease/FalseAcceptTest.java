package wherefrom.scan.grease;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Nothing that was not issued is ever read as an issued tag: other engines' tags, neighbouring
 * items, other issues, foreign codes in our frame and without it, a frame with random modules.
 */
class FalseAcceptTest {

  @Test
  void aThousandFramesWithoutAnIssuedTagGiveNone() {
    FalseAccepts accepts = new FalseAccepts();
    accepts.show(1_000_000, 50, 20);
    assertThat(accepts.frames()).isEqualTo(1_000);
    assertThat(accepts.wrong()).as(accepts.report()).isZero();
  }

  @Test
  @Tag("soak")
  void twoHundredThousandFramesWithoutAnIssuedTagGiveNone() {
    FalseAccepts accepts = new FalseAccepts();
    int frames = Integer.getInteger("soak.frames", 200_000);
    int first = Integer.getInteger("soak.first", 0);
    for (int done = first; done < first + frames; done += 1_000) {
      accepts.show(2_000_000L + done, 100, 10);
      System.out.println(accepts.frames() + " frames\n" + accepts.report());
    }
    assertThat(accepts.wrong()).as(accepts.report()).isZero();
  }
}
