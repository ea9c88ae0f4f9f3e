package wherefrom.job.wedge;

import java.util.ArrayList;
import java.util.List;

/** Types texts into a decoder at a pace, as a scanner or a person does. */
final class Keyboard {
  final BurstDecoder decoder;
  final List<BurstAnswer> answers = new ArrayList<>();
  final StringBuilder typed = new StringBuilder();
  long now = 1_000_000;

  Keyboard() {
    this(ScannerSetup.PLAIN);
  }

  Keyboard(ScannerSetup setup) {
    decoder = new BurstDecoder(setup);
  }

  /** Types a text with the same time before each of its characters. */
  Keyboard type(String text, long msPerKey) {
    text.codePoints().forEach(codePoint -> key(codePoint, msPerKey));
    return this;
  }

  Keyboard key(int codePoint, long msBefore) {
    now += msBefore;
    typed.appendCodePoint(codePoint);
    answers.addAll(decoder.typed(codePoint, now));
    return this;
  }

  Keyboard pause(long ms) {
    now += ms;
    answers.addAll(decoder.paused(now));
    return this;
  }

  /** A pause in which nobody asks the decoder. */
  Keyboard wait(int ms) {
    now += ms;
    return this;
  }

  String answered() {
    StringBuilder text = new StringBuilder();
    answers.forEach(answer -> text.append(answer.typed()));
    return text.toString();
  }
}
