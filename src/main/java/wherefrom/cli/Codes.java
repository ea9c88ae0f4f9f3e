package wherefrom.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** The codes of a call: its operands, or where {@code -} stands, the lines of standard input. */
final class Codes {
  private static final String STANDARD_INPUT = "-";

  /** Takes one code, or the two of a pair. */
  interface Taker {
    Status take(List<String> codes) throws BadInput, IOException;
  }

  private final BufferedReader in;
  private final int perLine;

  private Codes(BufferedReader in, int perLine) {
    this.in = in;
    this.perLine = perLine;
  }

  /**
   * Gives every code to the taker. One that cannot be used is said on standard error, and the
   * others are taken all the same.
   *
   * @throws BadInput when the call has none; nothing was taken then
   */
  static Status each(Call call, Answer answer, Taker taker) throws BadInput, IOException {
    return new Codes(call.in(), 1).take(call, answer, taker);
  }

  /** The same with two codes at a time; of half a pair nothing is taken. */
  static Status eachPair(Call call, Answer answer, Taker taker) throws BadInput, IOException {
    return new Codes(call.in(), 2).take(call, answer, taker);
  }

  private Status take(Call call, Answer answer, Taker taker) throws BadInput, IOException {
    List<String> operands = join(call.operands());
    if (operands.equals(List.of(STANDARD_INPUT))) {
      return lines(answer, taker);
    }
    if (operands.isEmpty() || operands.size() % perLine != 0) {
      throw call.wrong(perLine == 1 ? "Give a code." : "Give a part's code and a place's code.");
    }
    if (operands.size() == perLine) {
      answer.alone();
    }
    Status status = Status.RIGHT;
    for (int at = 0; at < operands.size(); at += perLine) {
      status = status.and(take(operands.subList(at, at + perLine), answer, taker));
    }
    return status;
  }

  private Status lines(Answer answer, Taker taker) throws IOException {
    Status status = Status.RIGHT;
    Lines lines = new Lines(in);
    for (int number = 1; lines.hasNext(); number++) {
      String line = lines.next();
      List<String> codes = split(line);
      if (codes.size() == perLine) {
        status = status.and(take(codes, answer, taker));
      } else if (!codes.isEmpty()) {
        answer.say("Line " + number + ": \"" + line.strip() + "\" is not " + wanted() + ".");
        status = Status.BAD_INPUT;
      }
    }
    return status;
  }

  private String wanted() {
    return perLine == 1 ? "one code" : "a part's code and a place's code";
  }

  private static Status take(List<String> codes, Answer answer, Taker taker) throws IOException {
    try {
      return taker.take(codes);
    } catch (BadInput e) {
      answer.fault(e.sentence());
      return e.status();
    }
  }

  private List<String> split(String line) {
    String stripped = line.strip();
    if (stripped.isEmpty()) {
      return List.of();
    }
    // One code a line: whatever stands there, so that a foreign code may hold spaces.
    return perLine == 1 ? List.of(stripped) : join(List.of(stripped.split("\\s+")));
  }

  /** {@code 0173 88} is one code that the shell took for two words. */
  private static List<String> join(List<String> words) {
    List<String> codes = new ArrayList<>();
    for (int at = 0; at < words.size(); at++) {
      String word = words.get(at);
      boolean halves =
          word.matches("[0-9]{4}")
              && at + 1 < words.size()
              && words.get(at + 1).matches("[0-9]{2}");
      codes.add(halves ? word + words.get(++at) : word);
    }
    return codes;
  }
}
