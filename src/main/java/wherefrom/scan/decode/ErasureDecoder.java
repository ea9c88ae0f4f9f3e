package wherefrom.scan.decode;

import java.util.Arrays;
import java.util.Optional;

/**
 * Corrects errors and erasures of a Reed–Solomon code over GF(256) whose roots are 2^0, 2^1, …:
 * Berlekamp–Massey started from the erasures, Forney's values (R. Blahut, Theory and Practice of
 * Error Control Codes, 1983, chapter 7).
 */
final class ErasureDecoder {
  private final int length;
  private final int checks;

  /**
   * @param length codewords in all
   * @param checks error correction codewords among them
   */
  ErasureDecoder(int length, int checks) {
    this.length = length;
    this.checks = checks;
  }

  /**
   * Corrects codewords.
   *
   * @param erased places of codewords that are not to be believed, each once, 0 first
   * @param spare syndromes that must stay unused as a check: errors * 2 + erasures ≤ checks - spare
   */
  Optional<CorrectedCodewords> correct(int[] received, int[] erased, int spare) {
    int[] syndromes = new int[checks];
    boolean clean = true;
    for (int at = 0; at < checks; at++) {
      int value = 0;
      for (int codeword : received) {
        value = Galois.multiply(value, Galois.power(at)) ^ codeword;
      }
      syndromes[at] = value;
      clean &= value == 0;
    }
    if (clean) {
      return Optional.of(new CorrectedCodewords(received, 0));
    }
    int[] locator = locator(syndromes, erasures(erased), erased.length);
    int degree = degree(locator);
    int errors = degree - erased.length;
    if (errors < 0 || 2 * errors + erased.length > checks - spare) {
      return Optional.empty();
    }
    return fix(received, syndromes, locator, degree, errors);
  }

  private int[] erasures(int[] erased) {
    int[] product = new int[checks + 1];
    product[0] = 1;
    for (int place : erased) {
      int root = Galois.power(length - 1 - place);
      product = Galois.product(product, new int[] {1, root}, checks + 1);
    }
    return product;
  }

  private int[] locator(int[] syndromes, int[] erasures, int erased) {
    int[] locator = erasures.clone();
    int[] before = erasures.clone();
    int registers = erased;
    for (int round = erased; round < checks; round++) {
      int discrepancy = 0;
      for (int at = 0; at <= Math.min(round, checks); at++) {
        discrepancy ^= Galois.multiply(locator[at], syndromes[round - at]);
      }
      int[] shifted = new int[checks + 1];
      System.arraycopy(before, 0, shifted, 1, checks);
      if (discrepancy == 0) {
        before = shifted;
        continue;
      }
      int[] next = locator.clone();
      for (int at = 0; at <= checks; at++) {
        next[at] ^= Galois.multiply(discrepancy, shifted[at]);
      }
      if (2 * registers <= round + erased) {
        registers = round + 1 + erased - registers;
        before = new int[checks + 1];
        for (int at = 0; at <= checks; at++) {
          before[at] = Galois.divide(locator[at], discrepancy);
        }
      } else {
        before = shifted;
      }
      locator = next;
    }
    return locator;
  }

  private static int degree(int[] polynomial) {
    int degree = polynomial.length - 1;
    while (degree > 0 && polynomial[degree] == 0) {
      degree--;
    }
    return degree;
  }

  private Optional<CorrectedCodewords> fix(
      int[] received, int[] syndromes, int[] locator, int degree, int errors) {
    int[] evaluator = Galois.product(syndromes, locator, checks);
    int[] derivative = new int[checks + 1];
    for (int at = 1; at <= checks; at += 2) {
      derivative[at - 1] = locator[at];
    }
    int[] fixed = received.clone();
    int found = 0;
    for (int place = 0; place < length; place++) {
      int exponent = length - 1 - place;
      int inverse = Galois.power(-exponent);
      if (Galois.evaluate(locator, inverse) == 0) {
        found++;
        int slope = Galois.evaluate(derivative, inverse);
        if (slope == 0) {
          return Optional.empty();
        }
        int value = Galois.divide(Galois.evaluate(evaluator, inverse), slope);
        fixed[place] ^= Galois.multiply(value, Galois.power(exponent));
      }
    }
    return found == degree ? checked(fixed, errors) : Optional.empty();
  }

  private Optional<CorrectedCodewords> checked(int[] fixed, int errors) {
    for (int at = 0; at < checks; at++) {
      int value = 0;
      for (int codeword : fixed) {
        value = Galois.multiply(value, Galois.power(at)) ^ codeword;
      }
      if (value != 0) {
        return Optional.empty();
      }
    }
    return Optional.of(new CorrectedCodewords(Arrays.copyOf(fixed, length), errors));
  }
}
