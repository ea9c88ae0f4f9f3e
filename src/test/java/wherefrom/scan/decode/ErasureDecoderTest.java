package wherefrom.scan.decode;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.common.reedsolomon.GenericGF;
import com.google.zxing.common.reedsolomon.ReedSolomonEncoder;
import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Against codewords made by the encoder of ZXing core 3.5. */
class ErasureDecoderTest {
  private static final int LENGTH = 26;
  private static final int CHECKS = 17;
  private static final int ROUNDS = 400;
  private final ErasureDecoder decoder = new ErasureDecoder(LENGTH, CHECKS);
  private final SplittableRandom random = new SplittableRandom(26);

  private int[] codewords() {
    int[] codewords = new int[LENGTH];
    for (int at = 0; at < LENGTH - CHECKS; at++) {
      codewords[at] = random.nextInt(256);
    }
    new ReedSolomonEncoder(GenericGF.QR_CODE_FIELD_256).encode(codewords, CHECKS);
    return codewords;
  }

  private int[] places() {
    int[] places = new int[LENGTH];
    for (int at = 0; at < LENGTH; at++) {
      int other = random.nextInt(at + 1);
      places[at] = places[other];
      places[other] = at;
    }
    return places;
  }

  private int[] spoilt(int[] sound, int[] places, int wrong) {
    int[] spoilt = sound.clone();
    for (int at = 0; at < wrong; at++) {
      spoilt[places[at]] ^= 1 + random.nextInt(255);
    }
    return spoilt;
  }

  @Test
  void everyMixOfErrorsAndErasuresWithinReachIsCorrected() {
    for (int erasures = 0; erasures <= CHECKS; erasures++) {
      for (int errors = 0; 2 * errors + erasures <= CHECKS; errors++) {
        int[] sound = codewords();
        int[] places = places();
        int[] received = spoilt(sound, places, errors + erasures);
        int[] erased = Arrays.copyOfRange(places, errors, errors + erasures);
        Optional<CorrectedCodewords> corrected = decoder.correct(received, erased, 0);
        assertThat(corrected).as("%d errors, %d erasures", errors, erasures).isPresent();
        assertThat(corrected.get().codewords()).isEqualTo(sound);
      }
    }
  }

  @Test
  void whatWouldUseTheSpareSyndromesIsRefused() {
    int spare = 6;
    for (int erasures = 0; erasures <= CHECKS; erasures++) {
      int errors = (CHECKS - spare - erasures) / 2 + 1;
      if (errors < 1) {
        continue;
      }
      int[] places = places();
      int[] received = spoilt(codewords(), places, errors + erasures);
      int[] erased = Arrays.copyOfRange(places, errors, errors + erasures);
      assertThat(decoder.correct(received, erased, spare)).isEmpty();
    }
  }

  @Test
  void randomCodewordsAreHardlyEverTakenForSound() {
    int taken = 0;
    for (int round = 0; round < 50 * ROUNDS; round++) {
      int[] noise = random.ints(LENGTH, 0, 256).toArray();
      taken += decoder.correct(noise, new int[0], 6).isPresent() ? 1 : 0;
    }
    // Spheres of five errors round 256^9 words: 26C5 * 255^5 / 256^17 of all, below 1e-23.
    assertThat(taken).isZero();
  }

  @Test
  void erasuresThatWereSoundDoNoHarm() {
    for (int round = 0; round < ROUNDS; round++) {
      int[] sound = codewords();
      int[] erased = Arrays.copyOf(places(), random.nextInt(CHECKS + 1));
      assertThat(decoder.correct(sound, erased, 0))
          .hasValueSatisfying(corrected -> assertThat(corrected.codewords()).isEqualTo(sound));
    }
  }
}
